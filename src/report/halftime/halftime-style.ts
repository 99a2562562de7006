import { INK, inkVariables } from '../page/ink.ts';

/** Style of the halftime page: one screen of a tablet held sideways (1024 by 768), nothing to scroll or tap. */
export const HALFTIME_STYLE = `
:root{color-scheme:light dark;${inkVariables(INK.light)}}
@media screen and (prefers-color-scheme:dark){:root{color-scheme:dark;${inkVariables(INK.dark)}}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:14.5px/1.22 Arial,"Liberation Sans",Helvetica,sans-serif;overflow-wrap:break-word}
main{max-width:64rem;margin:0 auto;padding:8px 12px}
h1{font-size:22px;margin:0}
h2{font-size:16px;margin:7px 0 2px;border-bottom:2px solid var(--ink)}
p,ul{margin:2px 0}
ul{padding-left:16px}
.head{display:flex;flex-wrap:wrap;gap:0 16px;align-items:baseline;justify-content:space-between}
.invented{border:1px dashed var(--ink);padding:0 6px;font-weight:700}
.top{font-size:17px;font-weight:700;border:2px solid var(--accent);padding:3px 8px;margin:4px 0}
.columns{display:grid;grid-template-columns:1.05fr 1.25fr 1fr;gap:0 18px}
.small,.none{color:var(--soft);font-size:13px}
table{border-collapse:collapse;width:100%;font-size:14px;line-height:1.15}
caption{display:none}
th,td{text-align:left;vertical-align:top;padding:2px 6px 2px 0;border-bottom:1px solid var(--grid)}
thead th{border-bottom:1px solid var(--ink);font-size:13px}
td.n,th.n{font-variant-numeric:tabular-nums;white-space:nowrap}
.credit{font-size:11px}
.foot{border-top:1px solid var(--rule);margin-top:6px;padding-top:2px}
@media (max-width:50rem){.top{font-size:17px;font-weight:700;border:2px solid var(--accent);padding:3px 8px;margin:4px 0}
.columns{grid-template-columns:1fr}}
@page{size:letter landscape;margin:.4in}
`;
