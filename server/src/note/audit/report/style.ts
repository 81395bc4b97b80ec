/** The look of the page: ink on paper, no colour carries meaning, tables that break well between pages. */
export const STYLE = `
:root { color-scheme: light dark; font: 15px/1.45 system-ui, sans-serif; }
main { max-width: 62rem; margin: 2rem auto; padding: 0 1rem; }
h1 { font-size: 1.6rem; } h2 { font-size: 1.2rem; margin-top: 2.2rem; border-bottom: 1px solid; }
.caution { border-left: 4px solid; padding-left: 0.8rem; }
nav a { margin-right: 0.8rem; }
table { border-collapse: collapse; width: 100%; font-size: 0.86rem; }
thead { display: table-header-group; }
th, td { text-align: left; padding: 0.15rem 0.5rem; border-bottom: 1px solid #8888; vertical-align: top; font-weight: normal; }
thead th { font-weight: bold; }
td { white-space: nowrap; }
.number { text-align: right; font-variant-numeric: tabular-nums; white-space: nowrap; }
.makings { font-size: 0.8rem; }
figure { margin: 1rem 0; break-inside: avoid; } figcaption { font-size: 0.8rem; }
tr { break-inside: avoid; }
.plot { width: 100%; max-width: 42rem; height: auto; font-size: 11px; fill: currentColor; }
.squares { display: flex; flex-wrap: wrap; gap: 0.5rem; } .plot.square { width: 19rem; break-inside: avoid; }
.plot .line { fill: none; stroke: currentColor; stroke-width: 1.3; }
.plot .axis { fill: none; stroke: currentColor; stroke-width: 1; }
.plot .grid { fill: none; stroke: currentColor; stroke-width: 0.5; opacity: 0.5; }
.plot .bar { fill: currentColor; opacity: 0.45; }
.plot .mark { fill: currentColor; stroke: currentColor; }
.plot .eye { fill: none; stroke: currentColor; stroke-width: 0.6; }
@media print { nav { display: none; } main { margin: 0; max-width: none; } section { break-before: auto; } }
`;
