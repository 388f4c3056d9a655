#!/usr/bin/env bash
# Makes the four fonts in src/main/resources/wallbook/fonts from Noto Sans, Noto Sans Math and Noto Sans
# Symbols 2, all version 2.004 or the like; needs fontTools (pyftsubset, pyftmerge, python3).
# usage: src/tools/make-fonts.sh <folder of the Noto fonts> src/main/resources/wallbook/fonts
set -euo pipefail
from=${1:?folder of the Noto fonts}; to=${2:?folder to write to}; work=$(mktemp -d)
plain='--no-hinting --layout-features= --drop-tables+=GSUB,GPOS,GDEF,DSIG,prep,gasp --notdef-outline --name-IDs=* --no-recalc-timestamp'
text='U+0020-007E,U+00A0-024F,U+0259,U+02B9-02DD,U+0300-0304,U+0306-030C,U+0323-0328,U+0370-03FF,U+0400-052F,U+1E00-1EFF,U+1F00-1FFF,U+2000-205E,U+2070-209C,U+20A0-20BF,U+2100-214F,U+2150-215F,U+2C60-2C7F,U+FFFD'
math='U+2190-2199,U+21B3,U+2202-2206,U+2208,U+2211-2213,U+2215,U+221A,U+221D-221E,U+2220,U+2225,U+2227-222A,U+2248,U+2260-2261,U+2264-2265,U+226A-226B,U+22A5,U+2300'
marks='U+25A0-25A1,U+25B2-25B3,U+25B6-25B7,U+25BC-25BD,U+25C0-25C1,U+25C6-25C7,U+25CA-25CC,U+25CF,U+25E6,U+2605-2606,U+2610-2612,U+26A0,U+26A1,U+2713-2714,U+2717-2718'
pyftsubset "$from/NotoSansMath-Regular.ttf" --unicodes="$math" $plain --output-file="$work/math.ttf"
pyftsubset "$from/NotoSansSymbols2-Regular.ttf" --unicodes="$marks" $plain --output-file="$work/marks.ttf"
for face in Regular Bold Italic BoldItalic; do
  pyftsubset "$from/NotoSans-$face.ttf" --unicodes="$text" $plain --output-file="$work/$face.ttf"
  pyftmerge --output-file="$work/m.ttf" "$work/$face.ttf" "$work/math.ttf" "$work/marks.ttf"
  pyftsubset "$work/m.ttf" --glyphs='*' --unicodes='*' $plain --output-file="$to/NotoSans-$face.ttf"
done
# Merging takes the tallest line of the three; the text font's own line height is wanted.
python3 - "$from" "$to" <<'EOF'
import sys
from fontTools.ttLib import TTFont
for face in ("Regular", "Bold", "Italic", "BoldItalic"):
    name = f"/NotoSans-{face}.ttf"
    made = TTFont(sys.argv[2] + name, recalcTimestamp=False)
    text = TTFont(sys.argv[1] + name)
    for key in ("ascent", "descent", "lineGap"):
        setattr(made["hhea"], key, getattr(text["hhea"], key))
    for key in ("sTypoAscender", "sTypoDescender", "sTypoLineGap", "usWinAscent", "usWinDescent"):
        setattr(made["OS/2"], key, getattr(text["OS/2"], key))
    made["head"].created, made["head"].modified = text["head"].created, text["head"].modified
    made.save(sys.argv[2] + name)
EOF
rm -r "$work"
