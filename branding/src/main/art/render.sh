#!/bin/bash
# Draws icons, splash and about picture from the two SVG files beside this script. Needs ImageMagick and DejaVu Sans.
set -euo pipefail
art=$(cd "$(dirname "$0")" && pwd)
branding=$art/../nbm-branding/core/core.jar/org/netbeans/core/startup
icons=$art/../icons
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
mkdir -p "$branding" "$icons"

convert -background none -density 384 "$art/mark.svg" "$scratch/mark.png"
for size in 16 32 48 128 256 512; do
  convert "$scratch/mark.png" -filter Lanczos -resize "${size}x${size}" "PNG32:$icons/quoin$size.png"
done
convert "$scratch/mark.png" -resize 1024x1024 "PNG32:$branding/frame1024.png"
cp "$icons/quoin256.png" "$branding/frame256.png"
cp "$icons/quoin512.png" "$branding/frame512.png"
for pair in :16 32:32 48:48; do
  for tone in '' _dark; do
    convert "$icons/quoin${pair#*:}.png" -channel A -threshold 50% +channel "$branding/frame${pair%:*}$tone.gif"
  done
done

convert -density 96 "$art/splash.svg" -resize 480x300! "$scratch/splash.png"
for tone in '' _dark; do
  convert "$scratch/splash.png" +dither -colors 255 "$branding/splash$tone.gif"
done
convert "$scratch/splash.png" "PNG24:$branding/about.png"
