import { FIELD_STYLE } from '../../report/field/field-style.ts';
import { INK, inkVariables } from '../../report/page/ink.ts';

/** The accent of the desk, which prints as a mid gray. */
const ACCENT = { light: '#2a6f97', dark: '#7db8da' } as const;

/** The desk's look: ink on paper, one accent, five sizes, large targets; nothing moves. */
export const DESK_STYLE = `
:root{color-scheme:light dark;${inkVariables(INK.light)};--accent:${ACCENT.light};--on-accent:#fff;--small:.875rem;--big:1.25rem;--huge:1.75rem}
@media (prefers-color-scheme:dark){:root{${inkVariables(INK.dark)};--accent:${ACCENT.dark};--on-accent:#111}}
*{box-sizing:border-box}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.45 system-ui,"Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif;font-variant-numeric:tabular-nums}
header{border-bottom:2px solid var(--ink);padding:.5rem 1.25rem 0;display:flex;flex-wrap:wrap;gap:.25rem 1.5rem;align-items:center}
.brand{margin:0;font-weight:800;font-size:var(--big);letter-spacing:-.01em}
.season-line{display:flex;flex-wrap:wrap;gap:.4rem 1.2rem;align-items:center;flex:1}
.season-name{font-weight:700}
.saving{color:var(--soft);font-size:var(--small);min-width:9rem}
.saving[data-saving=failed]{color:var(--ink);font-weight:800}
nav{display:flex;flex-wrap:wrap;width:100%;gap:0 .25rem}
nav button{border:0;border-bottom:4px solid transparent;border-radius:0;background:none;font-size:1rem;padding:.5rem .9rem}
nav button[aria-current]{border-bottom-color:var(--accent);font-weight:700}
main{padding:1rem 1.25rem 3rem}
h1{font-size:var(--huge);line-height:1.2;margin:.2rem 0 .8rem;letter-spacing:-.01em}
h2{font-size:var(--big);margin:1.2rem 0 .5rem}
p,ul{max-width:46rem}
.small{font-size:var(--small);color:var(--soft)}
button,input,select,textarea{font:inherit;color:inherit;background:var(--paper);border:1px solid var(--rule);border-radius:4px;min-height:2.75rem;padding:.4rem .8rem;max-width:100%}
button{cursor:pointer}
button:hover{border-color:var(--ink)}
button.main{background:var(--accent);border-color:var(--accent);color:var(--on-accent);font-weight:700}
button.quiet{border-color:transparent;color:var(--soft)}
button:disabled{opacity:1;color:var(--soft);background:var(--paper);border-style:dashed;border-color:var(--rule);cursor:default}
button[aria-pressed=true]{border:2px solid var(--accent);font-weight:700}
:focus-visible{outline:3px solid var(--accent);outline-offset:2px}
label{display:block;margin:.5rem 0}
label input:not([type=checkbox]):not([type=radio]),label textarea{display:block;width:100%;max-width:24rem;margin-top:.2rem}
.ways{display:grid;grid-template-columns:repeat(auto-fit,minmax(min(18rem,100%),1fr));gap:1rem 2rem}
.ways section{border-top:2px solid var(--ink)}.ways button{margin-bottom:.4rem}
.seasons,.lines{padding:0;list-style:none}
.seasons li{margin:.5rem 0}
.lines li{padding:.25rem 0;border-bottom:1px solid var(--grid)}
.problem{font-weight:600;border-left:6px solid var(--ink);margin:.8rem 1.25rem;padding:0 1rem}
.problem:empty,.note:empty{display:none}
.note{margin:.8rem 1.25rem}
.row{display:flex;flex-wrap:wrap;gap:.5rem 1rem;align-items:end}
.row label{margin:0;flex:0 1 22rem}.row .fault{flex-basis:100%}
.tabs{display:flex;flex-wrap:wrap;gap:.4rem;margin:1rem 0 .5rem}
.space{flex:1}
.shelf iframe{width:100%;height:calc(100vh - 9rem);min-height:30rem;border:1px solid var(--rule);background:var(--paper)}
.printing{position:absolute;width:0;height:0;border:0;visibility:hidden}
.view{max-width:96rem}
label select{display:block;width:100%;margin-top:.2rem}
.season-line select,.inline select{display:inline-block;width:auto;margin:0}
fieldset{min-width:0}
.inline{display:flex;gap:.6rem;align-items:center}
.inline select{min-width:16rem}
.soft{color:var(--soft);font-size:var(--small);font-weight:400}
.knobs{display:flex;flex-wrap:wrap;gap:.6rem 1.2rem;align-items:end}
.knobs p{flex-basis:100%;margin:.2rem 0}
.knobs label{margin:0;flex:0 1 18rem}.knobs label.short{flex:0 0 5rem}
fieldset{border:0;padding:0;margin:0;display:flex;flex-wrap:wrap;gap:.3rem}
legend{padding:0;font-size:var(--small);color:var(--soft)}
.pad{margin-top:.6rem;display:grid;grid-template-columns:minmax(0,1fr) minmax(22rem,30rem);gap:1rem 2rem;align-items:start}
.strip{border:2px solid var(--rule);border-radius:6px;padding:.6rem 1rem;min-height:23rem}
.strip:focus{outline:4px solid var(--accent);outline-offset:0;border-color:var(--accent)}
.situation{margin:0;font-size:var(--huge);line-height:1.2}
.situation .soft{margin-left:.8rem;display:inline-block}
.stops{display:flex;flex-wrap:wrap;gap:.25rem;padding:0;margin:.6rem 0;list-style:none}
.stops li{border:1px solid var(--grid);border-radius:4px;padding:.15rem .5rem;min-width:5rem}
.stops li span{display:block;font-size:var(--small)}
.stops li[aria-current]{border:2px solid var(--accent);background:var(--tint1)}
.stops .blank b{color:var(--soft);font-weight:400}
.ask{font-size:var(--big);font-weight:700;margin:.6rem 0 .4rem}
.entry{font-size:var(--huge);margin-left:1rem;border-bottom:3px solid var(--accent);padding:0 .4rem}
.choices{display:flex;flex-wrap:wrap;gap:.4rem}
.choices button{font-size:var(--big);min-height:3.4rem;min-width:6.5rem;text-align:left}
kbd{font:inherit;font-weight:800;border:1px solid var(--rule);border-radius:3px;padding:0 .4rem;margin-right:.3rem;background:var(--tint1);display:inline-block;min-width:1.7rem;text-align:center}
.faults{list-style:none;padding:0;margin:.5rem 0 0;font-weight:600}
.faults:empty{display:none}
table{border-collapse:collapse;width:100%;max-width:46rem;font-size:var(--small)}
caption{text-align:left;font-weight:700;font-size:1rem;padding:.6rem 0 .2rem}
th,td{text-align:left;padding:.15rem .5rem .15rem 0;border-bottom:1px solid var(--grid);font-weight:400}
thead th{border-bottom:1px solid var(--rule);vertical-align:bottom;color:var(--soft)}
.number{text-align:right}
.counts abbr{text-decoration:none}.counts th,.counts td{padding-right:.35rem}
.snaps tr[aria-current] td,.snaps tr[aria-current] th{background:var(--tint1);font-weight:700}
.snaps button{min-height:1.9rem;padding:0 .5rem;border:0}
.cards{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(22rem,100%),1fr));gap:1.2rem}
.card{border-top:2px solid var(--ink)}
.pad>.card{position:sticky;top:.5rem}
.side .knobs{border-top:2px solid var(--ink);padding-top:.6rem}
.side .knobs button{min-height:2.4rem}
.settings textarea{width:100%;max-width:none;min-height:24rem;font:var(--small)/1.5 ui-monospace,Consolas,monospace}
.settings{margin:1rem 0}
summary{cursor:pointer;min-height:2.75rem;padding:.5rem 0;font-weight:700}
.fields{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(20rem,100%),1fr));gap:.8rem 1.5rem;align-items:end;margin:.5rem 0 1rem}
.setting label{margin:0}.setting input,.setting select{display:block;width:100%;margin-top:.2rem}
.fault{display:block;font-weight:600;min-height:1.45em}
.settings fieldset{margin:.5rem 0 1rem}.days,.order{display:block}
.day{border-left:3px solid var(--rule);padding-left:.8rem;margin:.6rem 0}
.period,.day>.row{margin:.3rem 0;max-width:none}.period>input{flex:1 1 14rem;max-width:24rem}.row .short{flex:0 0 6rem;margin:0}.period .short{display:flex;flex:0 0 auto;gap:.4rem;align-items:center}.period .short input{width:4.5rem}
.order ol{padding-left:1.6rem}.order li{margin:.2rem 0}.order li button{min-height:2rem;padding:.1rem .6rem}
.keys{display:flex;flex-wrap:wrap;gap:.2rem 1.2rem;max-width:none}
.card h2{margin:.4rem 0}
.men{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(16rem,100%),1fr));gap:.2rem 1rem;margin:1rem 0}
.men select,.question select{display:block;width:100%}
.men label{margin:.5rem 0 0}.check{display:flex;gap:.5rem;align-items:center;min-height:2.4rem;cursor:pointer}.men .check{margin:0}.check input{min-height:0;width:1.4rem;height:1.4rem;margin:0}
.answers{display:block;margin:1rem 0}.answers label input:not([type=checkbox]):not([type=radio]){max-width:none}
.scroll{overflow-x:auto;max-width:100%}
.scroll table{max-width:none}
svg text{fill:var(--ink)}
${FIELD_STYLE}@media (max-width:64rem){.pad{grid-template-columns:minmax(0,1fr)}.pad>.card{order:-1;top:0;background:var(--paper);padding-bottom:.3rem}.pad>.card svg{max-width:22rem}.pad>.card p{margin:.3rem 0}}
@media (max-height:40rem){.pad>.card{position:static}}
@media (max-width:40rem){.counts{font-size:.75rem}.counts th,.counts td{padding-right:.2rem}main,header{padding-left:.75rem;padding-right:.75rem}h1{font-size:var(--big)}nav button{padding:.5rem .55rem}}
`;
