/** Marks, strips and matrices: one look on every page. */
export const MARK_STYLE = `
.sure{width:.85em;height:.85em;vertical-align:-.05em;flex:none}
.sure .full{fill:var(--accent);stroke:none}.sure .line{fill:none;stroke:var(--accent);stroke-width:2}
.how-sure{white-space:nowrap}
.strips{max-width:62rem}
.strip{display:grid;grid-template-columns:minmax(8rem,13rem) minmax(9rem,1fr) minmax(9rem,17rem);gap:0 .8rem;align-items:center;border-bottom:1px solid var(--grid);padding:.15rem 0}
.strip .note{font-variant-numeric:tabular-nums}
.draw{display:block;width:100%;height:auto;max-height:1.7rem}
.draw path{fill:none}
.draw .scale{stroke:var(--grid);stroke-width:2}.draw .others{stroke:var(--rule);stroke-width:1.5}
.draw .range,.draw .ends{stroke:var(--accent);stroke-width:3}.draw .ends{stroke-width:1.5}.draw .thin{stroke-dasharray:5 4}
.draw .dot{fill:var(--accent)}.draw .open{fill:var(--paper);stroke:var(--accent);stroke-width:2}
.draw .second{fill:var(--paper);stroke:var(--ink);stroke-width:1.5}
.draw .reference{stroke:var(--ink);stroke-width:1.5;stroke-dasharray:2 3}
.draw .hatched{stroke:var(--rule);stroke-width:1.5}
.scale-row{border:0;color:var(--soft);font-size:var(--s5,.82rem)}
.scale-row .ends{display:flex;justify-content:space-between}
table.grid{width:auto}
table.grid td,table.grid thead th{text-align:center;min-width:3.6rem;padding:.3rem .5rem}
table.grid td{border:1px solid var(--paper);font-variant-numeric:tabular-nums}
.t0{background:var(--tint0)}.t1{background:var(--tint1)}.t2{background:var(--tint2)}.t3{background:var(--tint3)}.t4{background:var(--tint4)}
.hatch{background:repeating-linear-gradient(45deg,var(--paper) 0 5px,var(--grid) 5px 7px)}
.t1,.t2,.t3,.t4,.hatch{print-color-adjust:exact;-webkit-print-color-adjust:exact}
@media screen and (max-width:40rem){.strip{grid-template-columns:1fr auto}.strip .name{font-weight:700}.strip .draw,.strip .ends{grid-column:1/-1;grid-row:2}.strip .note{text-align:right}.scale-row .note{grid-column:1/-1;grid-row:1}.scale-row .name{display:none}
table.grid{width:100%}
table.grid td,table.grid thead th{min-width:0;padding:.25rem .05rem;font-size:.72rem}
table.grid thead th{writing-mode:vertical-rl;transform:rotate(180deg);text-align:left;white-space:nowrap;margin:0 auto}
table.grid tbody th{font-size:.75rem;padding-right:.2rem}}
`;
