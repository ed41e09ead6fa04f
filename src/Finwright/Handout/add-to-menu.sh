#!/bin/sh
# Puts Finwright into the menu of this desktop, for this user alone. Run it again after the folder was moved.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
menu="${XDG_DATA_HOME:-$HOME/.local/share}/applications"
mkdir -p "$menu"
# Within quotes the desktop reads these signs in its own way.
path=$(printf '%s' "$here/Finwright" | sed -e 's/[\\"`$]/\\\\&/g' -e 's/%/%%/g')
cat > "$menu/finwright.desktop" <<END
[Desktop Entry]
Type=Application
Name=Finwright
Comment=Design, make and prove your own windsurf fins
Comment[de]=Windsurffinnen entwerfen, bauen und prüfen
Exec="$path"
Icon=$here/wwwroot/_content/Finwright.Page/fin.svg
Terminal=false
Categories=Graphics;Engineering;
END
echo "Finwright is in the menu now: $menu/finwright.desktop. Delete that file to take it out again."
