#!/bin/sh
# What the tests need from the npm registry, under the folder given: HTML_CodeSniffer, a second engine of
# accessibility rules beside axe. Nothing of it runs while it is installed.
set -eu
place="$1/node"
[ -f "$place/node_modules/html_codesniffer/build/HTMLCS.js" ] && exit 0
command -v npm >/dev/null 2>&1 || { echo "The tests need npm. Run: sudo apt-get install npm"; exit 1; }
npm install --prefix "$place" --no-save --no-package-lock --no-audit --no-fund --ignore-scripts --silent html_codesniffer@2.5.1
