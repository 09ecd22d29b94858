/** Forms: boxes in a grid, what was understood beside what was typed, problems in red with a word. */
export const formsCss = `
.visually-hidden{position:absolute;width:1px;height:1px;margin:-1px;padding:0;border:0;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
.desk h1{font-size:clamp(1.3rem,1rem + 1.2vw,1.7rem);margin:.2rem 0 .4rem}
.desk .lead{max-width:44rem}
.desk .over{margin:0;font:.9rem/1.4 var(--sans)}
.desk fieldset{border:1px solid var(--rule);padding:.4rem 1rem .9rem;margin:1rem 0;min-width:0}
.desk fieldset fieldset{margin:.6rem 0;background:var(--sheet)}
.desk legend{font-weight:600;padding:0 .3rem}
.desk details.blank{border:1px dashed var(--rule);padding:0 1rem;margin:.6rem 0}
.desk details.blank fieldset{border:0;padding:0;margin:0 0 .8rem;background:none}
.desk .boxes{display:grid;grid-template-columns:repeat(auto-fill,minmax(min(15rem,100%),1fr));gap:.7rem 1.4rem;align-items:end}
.desk .boxes.pairs{grid-template-columns:minmax(0,1fr)}
@media (min-width:40rem){.desk .boxes.pairs{grid-template-columns:repeat(2,minmax(0,1fr))}}
.desk .supposed{max-width:60rem}
.desk details.fold{margin-top:.5rem}
.desk details.fold summary{font:600 .9rem/1.4 var(--sans)}
.desk fieldset>.hint{margin:0 0 .6rem}
.desk .box{display:flex;flex-direction:column;gap:.15rem;min-width:0}
.desk .box:has(textarea){grid-column:1/-1}
.desk .box label{font:600 .9rem/1.35 var(--sans)}
.desk .box input[type=text],.desk .box select,.desk .box textarea{width:100%;min-height:2.4rem}
.desk .box textarea{font:.95rem/1.45 ui-monospace,SFMono-Regular,Menlo,Consolas,monospace;resize:vertical}
.desk textarea.code{min-height:24rem}
.desk .hint{margin:0;font:.82rem/1.35 var(--sans);color:var(--soft)}
.desk .understood{margin:0;font:italic .9rem/1.35 var(--serif)}
.desk .problem{margin:0;font:.88rem/1.35 var(--sans);color:var(--stop)}
.desk .problem::before{content:"To put right: ";font-weight:700}
.desk ul.problem{padding-left:1.2rem}
.desk ul.problem::before{content:none}
.desk .wrong input,.desk .wrong select,.desk .wrong textarea,.desk [aria-invalid=true]{border:2px solid var(--stop)}
.desk .photo-row{display:flex;flex-wrap:wrap;gap:.6rem;align-items:center;margin-top:.6rem}
.desk button.small{padding:.2rem .7rem;background:var(--paper);color:var(--ink)}
.photo-list{list-style:none;padding:0;display:grid;gap:1rem;grid-template-columns:repeat(auto-fill,minmax(min(14rem,100%),1fr))}
.photo-list img{width:100%;height:auto;max-height:18rem;object-fit:contain;background:var(--sheet);border:1px solid var(--rule)}
.desk .remove{display:flex;gap:.4rem;align-items:center;margin-top:.6rem;font:.85rem/1.4 var(--sans)}
.problem-summary{border:2px solid var(--stop);padding:.4rem 1rem;margin:1rem 0;max-width:60rem}
.problem-summary h2,.desk .notes h2{border:0;margin:.3rem 0;padding:0;font-size:1.05rem}
.desk .saved{border-left:3px solid var(--ink);padding:.2rem 0 .2rem .8rem;font-weight:600}
.desk .buttons{display:flex;flex-wrap:wrap;gap:.6rem;margin:1rem 0}
.desk a.button{background:var(--ink);color:var(--paper);padding:.45rem 1rem;font-weight:600;text-decoration:none}
.desk form button+button{background:var(--paper);color:var(--ink)}
.edit{display:grid;grid-template-columns:minmax(0,1fr);gap:1rem 2.2rem}
.section-links ol{list-style:none;margin:0;padding:0;display:flex;flex-wrap:wrap;gap:.3rem 1rem;font:.9rem/1.4 var(--sans)}
.section-links a[aria-current]{font-weight:700;text-decoration:none;border-bottom:2px solid var(--ink)}
.aside .drawing{max-height:60vh}
@media (max-width:63.99rem){.aside .drawing{max-height:32vh}}
@media (min-width:64rem){
.edit{grid-template-columns:minmax(16rem,24rem) minmax(0,1fr)}
.aside{position:sticky;top:1rem;align-self:start;max-height:98vh;overflow:auto}
}
.roof-list .links a{margin-right:.8rem}
.taken-off{list-style:none;padding:0}
.taken-off li,.roof-list .saved{display:flex;flex-wrap:wrap;gap:.4rem 1rem;align-items:center}
.taken-off button,.roof-list .saved button{padding:.2rem .7rem}
.roof-list th{font-family:var(--serif);font-size:1rem}
@media (max-width:40rem){.desk input,.desk select,.desk textarea,.desk button{min-height:2.75rem}.desk input[type=checkbox]{min-height:1.4rem;min-width:1.4rem}}
`;
