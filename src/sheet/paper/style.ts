/** Styles of the sheet: ink on paper. */

/** Styles of the sheet: ink on paper, nothing told by colour. */
export const STYLE = `
@page { size: A4; margin: 11mm 11mm 10mm; font: 8pt system-ui, sans-serif; }
* { box-sizing: border-box; }
body { font: 8.5pt/1.24 system-ui, "DejaVu Sans", sans-serif; color: #111; background: #fff; max-width: 188mm; margin: 0 auto; }
h1 { font-size: 13pt; line-height: 1.15; margin: 0 0 0.5mm; overflow-wrap: anywhere; }
h2 { font-size: 9.5pt; margin: 1.7mm 0 0.4mm; border-bottom: 0.3mm solid #111; break-after: avoid; }
p { margin: 0.4mm 0; overflow-wrap: anywhere; }
.subtitle { margin-bottom: 1.5mm; }
.detail { padding-left: 3mm; }
.outcome { font-size: 13pt; font-weight: 700; border: 0.7mm solid #111; padding: 1.5mm 3mm; margin: 1.5mm 0; }
.finding { padding-left: 4mm; text-indent: -3mm; }
.finding::before { content: "\\2022"; display: inline-block; width: 3mm; text-indent: 0; }
.cautions { border: 0.7mm solid #111; margin: 1.5mm 0; padding: 1.2mm 2mm 1.2mm 6.5mm; font-size: 9pt; line-height: 1.2; columns: 2; column-gap: 8mm; break-inside: avoid; }
.cautions li { margin: 0 0 0.6mm; break-inside: avoid; }
.cautions li::marker { content: "!\\00a0\\00a0"; font-weight: 700; }
table { border-collapse: collapse; width: 100%; margin: 0.8mm 0; font-size: 8pt; font-variant-numeric: tabular-nums; }
thead { display: table-header-group; }
tr { break-inside: avoid; }
th, td { padding: 0.3mm 1.2mm; border-bottom: 0.1mm solid #999; text-align: right; vertical-align: top; overflow-wrap: anywhere; }
th { font-weight: 600; border-bottom-color: #111; vertical-align: bottom; }
.left { text-align: left; }
.blank { min-width: 15mm; height: 5mm; border-bottom: 0.25mm solid #111; }
.blanks { display: flex; flex-wrap: wrap; gap: 1mm 6mm; margin: 1.2mm 0; break-inside: avoid; }
.blanks span { flex: 1 0 38mm; border-bottom: 0.25mm solid #111; padding-bottom: 3.5mm; font-size: 8pt; }
figure { margin: 1mm 0; break-inside: avoid; }
svg { max-width: 100%; height: auto; display: block; }
svg circle, svg line { fill: none; stroke: #111; stroke-width: 1; }
svg .upright { stroke-dasharray: 3 3; }
svg .turned { stroke-width: 3; }
svg .row { stroke-width: 1; stroke-dasharray: 1 2; }
svg text { font: 10px system-ui, "DejaVu Sans", sans-serif; text-anchor: middle; }
svg .key { text-anchor: start; }
@media screen { body { padding: 6mm; } }
`;
