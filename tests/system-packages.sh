#!/bin/sh
# What the tests need besides Python: a browser, a PostgreSQL server, the zbar library, openssl, npm, and a network
# printer (ippeveprinter, which wants a D-Bus daemon; where no package has it, CUPS itself does), a print server (cupsd),
# nginx, and systemd's checker of units.
# Installs what is missing where it may, otherwise says precisely what to install.
set -u

found() { # found NAME...: is any of these commands there?
    for name in "$@"; do
        command -v "$name" >/dev/null 2>&1 && return 0
    done
    return 1
}

postgres_there() {
    found initdb || ls /usr/lib/postgresql/*/bin/initdb >/dev/null 2>&1
}

zbar_there() {
    ls /usr/lib/*/libzbar.so.0 /usr/lib/libzbar.so.0 /opt/homebrew/lib/libzbar.dylib \
        /usr/local/lib/libzbar.dylib 2>/dev/null | grep -q .
}

printer_there() { # macOS has it with its own CUPS
    found ippeveprinter || [ -x /usr/sbin/ippeveprinter ]
}

server_there() {
    found cupsd || [ -x /usr/sbin/cupsd ]
}

nginx_there() {
    found nginx || [ -x /usr/sbin/nginx ]
}

debian="" brew=""
found openssl || { debian="$debian openssl"; brew="$brew openssl"; }
found chromium chromium-browser || { debian="$debian chromium"; brew="$brew chromium"; }
postgres_there || { debian="$debian postgresql"; brew="$brew postgresql"; }
printer_there || debian="$debian cups-ipp-utils"
server_there || debian="$debian cups-daemon"
nginx_there || { debian="$debian nginx-light"; brew="$brew nginx"; }
found systemd-analyze || debian="$debian systemd"
found dbus-daemon || { debian="$debian dbus-daemon"; brew="$brew dbus"; }
zbar_there || { debian="$debian libzbar0"; brew="$brew zbar"; }

found npm || { debian="$debian npm"; brew="$brew node"; }

[ -n "$debian" ] || exit 0

if found apt-get; then
    root=""
    [ "$(id -u)" -eq 0 ] || { found sudo && sudo -n true 2>/dev/null && root="sudo"; }
    if [ "$(id -u)" -eq 0 ] || [ -n "$root" ]; then
        echo "Installing for the tests:$debian"
        $root apt-get update -qq &&
            DEBIAN_FRONTEND=noninteractive $root apt-get install -y -qq --no-install-recommends $debian >/dev/null &&
            exit 0
    fi
    echo "The tests need these packages. Run: sudo apt-get install$debian"
    exit 1
fi
if found brew && [ -n "$brew" ]; then
    echo "Installing for the tests:$brew"
    brew install --quiet $brew && exit 0
fi
echo "The tests need a Chromium browser, a PostgreSQL server, the zbar library, openssl, npm, cupsd, nginx, systemd-analyze, and ippeveprinter with a D-Bus daemon."
echo "Missing here, by their Debian names:$debian"
exit 1
