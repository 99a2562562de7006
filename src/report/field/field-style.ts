/** Style of the field drawings: one ink; what a line means is read from dash and end, not by color. */
export const FIELD_STYLE = `
.field{display:block;width:100%;height:auto;background:var(--paper);border:1px solid var(--rule)}
.field path{fill:none;stroke:var(--ink)}
.field .g{stroke:var(--grid);stroke-width:1.5}.field .h{stroke:var(--rule);stroke-width:1.5}.field .l{stroke:var(--rule);stroke-width:2.5}
.field .o{stroke:var(--rule);fill:var(--paper);stroke-width:2}
.field .r{stroke-width:3}.field .late{stroke-dasharray:12 6}.field .a{fill:var(--ink);stroke:none}.field .p{stroke-width:2}
.field .z{stroke-width:2;stroke-dasharray:7 5}.field .b{stroke-width:4}.field .m{stroke-width:2;stroke-dasharray:2 4}.field .c{stroke-width:2}
.field circle{stroke:var(--ink);stroke-width:2}.field circle.open{fill:var(--paper)}.field circle.filled{fill:var(--ink)}
.field text{font-size:16px;font-weight:700;text-anchor:middle}.field text.filled{fill:var(--paper)}
`;
