#!/bin/sh
# Starts the page. Close this window to end it; everything is kept as you go.
exec "$(dirname "$0")/Finwright" serve
