"""The label templates that come with the program: one TOML file each, described in README.md."""
