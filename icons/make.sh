#!/usr/bin/env bash
# Makes every icon from icon.svg. Folders and names for phones are those that `tauri icon` writes, so that they can be
# copied into the projects it generates; made here, because its old Android icons cut the tag off and its iOS ones keep a
# channel of opacity, which Apple's shop refuses. Needs Debian's librsvg2-bin and poppler-utils.
set -euo pipefail
cd "$(dirname "$0")"

paper='#efe5d3'
tag=$(sed -n '/<g id="tag">/,/^  <\/g>/p' icon.svg)
# The tag, smaller and in the middle.
smaller() { echo "<g transform=\"translate(256 256) scale($1) translate(-256 -258)\">$tag</g>"; }
edge_to_edge="<rect width=\"512\" height=\"512\" fill=\"$paper\"/>"
# Launchers cut an icon to a shape of their own and leave the middle 66 of 108 alone.
in_the_middle=$(smaller 0.58)

# Pixels, file, drawing.
draw() { svg "$3" | rsvg-convert --width="$1" --height="$1" --output="$2"; }
svg() { echo "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 512 512\">$1</svg>"; }

for size in 32:32x32 48:48x48 64:64x64 128:128x128 256:128x128@2x 512:icon; do
  rsvg-convert --width="${size%%:*}" --height="${size%%:*}" icon.svg --output="${size##*:}.png"
done

# Density, a layer of the icon, the whole icon before Android 8: in pixels.
for density in mdpi:108:48 hdpi:162:72 xhdpi:216:96 xxhdpi:324:144 xxxhdpi:432:192; do
  IFS=: read -r name layer whole <<< "$density"
  folder="android/mipmap-$name"
  mkdir -p "$folder"
  draw "$layer" "$folder/ic_launcher_background.png" "$edge_to_edge"
  draw "$layer" "$folder/ic_launcher_foreground.png" "$in_the_middle"
  # Of this one a launcher takes the opacity alone and colours it itself.
  draw "$layer" "$folder/ic_launcher_monochrome.png" "<style>#tag *{fill:none;stroke:#000}</style>$in_the_middle"
  draw "$whole" "$folder/ic_launcher_round.png" "<circle cx=\"256\" cy=\"256\" r=\"248\" fill=\"$paper\"/>$(smaller 0.82)"
  rsvg-convert --width="$whole" --height="$whole" icon.svg --output="$folder/ic_launcher.png"
done

# Points, times pixels a point; 20, 29 and 40 at two pixels are there twice, for the tablet too.
mkdir -p ios
for size in 20:1 20:2 20:3 29:1 29:2 29:3 40:1 40:2 40:3 60:2 60:3 76:1 76:2 83.5:2 512:2; do
  points="${size%%:*}" scale="${size##*:}"
  name="ios/AppIcon-${points}x${points}@${scale}x"
  if [ "$points" = 512 ]; then name="ios/AppIcon-512@2x"; fi
  # By way of paper, which has no opacity.
  svg "$edge_to_edge$tag" | rsvg-convert --format=pdf |
    pdftoppm -png -singlefile -scale-to "$(awk "BEGIN { print $points * $scale }")" - "$name"
  case "$size" in 20:2 | 29:2 | 40:2) cp "$name.png" "$name-1.png" ;; esac
done
