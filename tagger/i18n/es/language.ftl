# The language's own name, as it stands in the list of languages.
language-name = Español
