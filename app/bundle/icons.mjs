// Draws the icons of public/icons from the one mark, public/icons/icon.svg. Run it after the mark has changed:
//
//   npm install --prefix /tmp/icons @resvg/resvg-js@2.6.2
//   NODE_PATH=/tmp/icons/node_modules node app/bundle/icons.mjs
//
// Maskable icons keep the mark inside the safe zone, a circle of 40 % of the width (W3C Web Application Manifest,
// "Icon masks and safe zone"), on paper to the edge; the touch icon is paper to the edge as well, for the system
// rounds its corners itself.
import { createRequire } from "node:module";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

const require = createRequire(join(process.env.NODE_PATH ?? ".", "x.js"));
const { Resvg } = require("@resvg/resvg-js");
const folder = new URL("../../public/icons/", import.meta.url);
const mark = readFileSync(new URL("icon.svg", folder), "utf8");

const whole = mark.replace(/<rect[^>]*\/>/, (rect) => rect.replace(/ rx="\d+"/, ""));
const masked = whole.replace('viewBox="0 0 512 512"', 'viewBox="-50 -50 612 612"').replace(
  /<rect[^>]*\/>/,
  '<rect x="-50" y="-50" width="612" height="612" fill="#fcfcf9"/>',
);

for (const [name, svg, size] of [
  ["icon-192.png", mark, 192],
  ["icon-512.png", mark, 512],
  ["icon-maskable-192.png", masked, 192],
  ["icon-maskable-512.png", masked, 512],
  ["apple-touch-icon-180.png", whole, 180],
]) {
  const png = new Resvg(svg, { fitTo: { mode: "width", value: size } }).render().asPng();
  writeFileSync(new URL(name, folder), png);
}
