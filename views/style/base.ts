import { sheetColours, sunColours } from '../../src/drawing/drawing-css.ts';

/** Paper, ink, letters. */
export const baseCss = `
:root{${sheetColours}--rule:#cfcbc2;--serif:"Iowan Old Style","Palatino Linotype",Palatino,"Book Antiqua",Georgia,serif;--sans:system-ui,-apple-system,"Segoe UI",Roboto,"Helvetica Neue",Arial,sans-serif;color-scheme:light}
:root:has(#sun:checked){${sunColours}--rule:#000;font-size:112.5%}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 var(--serif);font-variant-numeric:tabular-nums lining-nums}
.drawing text{font-family:var(--sans)}
a{color:inherit;text-underline-offset:.15em}
a:hover{text-decoration-thickness:2px}
:focus-visible{outline:3px solid var(--ink);outline-offset:2px}
h1,h2,h3{line-height:1.25;font-weight:600;text-wrap:balance}
h1{font-size:1.15rem;margin:0}
h2{font-size:1.3rem;margin:2.2rem 0 .6rem;padding-top:.5rem;border-top:1px solid var(--ink)}
h3{font-size:1.05rem;margin:1.2rem 0 .3rem}
p,ul,ol,dl{margin:.5rem 0}
ul,ol{padding-left:1.3rem}
li{margin:.25rem 0}
.quiet{color:var(--soft)}
.label{font:600 .78rem/1.3 var(--sans);letter-spacing:.04em;text-transform:none;color:var(--soft)}
.stop{color:var(--stop);font-weight:700}
.skip{position:absolute;left:-100vw}
.skip:focus{left:.5rem;top:.5rem;background:var(--paper);padding:.5rem;z-index:9}
.unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
sup{line-height:0;font-size:.72em}
sup a{display:inline-block;min-width:1.6rem;min-height:1.6rem;padding:.8rem .15rem;margin:-.8rem 0;text-decoration:none;line-height:0}
sup a:hover{text-decoration:underline}
code{overflow-wrap:anywhere}
summary{cursor:pointer;font-weight:600;padding:.3rem 0}
input,select,textarea,button{font:inherit;color:inherit}
input[type=text],input:not([type]),select,textarea{background:var(--sheet);border:1px solid var(--soft);border-radius:0;padding:.3rem .4rem;max-width:100%}
button{background:var(--ink);color:var(--paper);border:1px solid var(--ink);border-radius:0;padding:.45rem 1rem;font-weight:600;cursor:pointer}
button:hover{background:var(--soft)}
.place-name,.place-name:hover{background:none;color:inherit;border:0;padding:0;font-weight:inherit;text-align:left;text-decoration:underline dotted;text-underline-offset:.2em;min-height:1.6rem}
@media (prefers-reduced-motion:no-preference){html{scroll-behavior:smooth}}
`;

/** Head, navigation, foot. */
export const shellCss = `
.head{display:flex;flex-wrap:wrap;gap:.3rem 1.2rem;align-items:baseline;padding:.6rem clamp(.8rem,3vw,2rem);border-bottom:1px solid var(--ink);font:.9rem/1.4 var(--sans)}
.head .home{font:600 1.05rem/1.4 var(--serif);text-decoration:none}
.head nav ul{display:flex;flex-wrap:wrap;gap:.2rem 1rem;list-style:none;margin:0;padding:0}
.head nav li{margin:0}
.head nav a{display:inline-block;min-height:1.6rem;line-height:1.6rem}
.head nav a[aria-current]{font-weight:700;text-decoration:none;border-bottom:2px solid var(--ink)}
.head label{margin-left:auto;display:flex;gap:.4rem;align-items:center;cursor:pointer}
.head input{width:1.1rem;height:1.1rem;accent-color:var(--ink)}
.invented{margin:0;padding:.3rem clamp(.8rem,3vw,2rem);border-bottom:1px dashed var(--ink);font:.85rem/1.4 var(--sans)}
main{padding:1rem clamp(.8rem,3vw,2rem) 2rem;max-width:100rem;margin:0 auto}
.prose{max-width:44rem}
.title-block{margin:2rem clamp(.8rem,3vw,2rem) 1.5rem;border:1.5px solid var(--ink);display:grid;grid-template-columns:repeat(auto-fit,minmax(11rem,1fr));font:.85rem/1.4 var(--sans)}
.title-block div{padding:.4rem .6rem;border-right:1px solid var(--rule);border-bottom:1px solid var(--rule)}
.title-block dt{font-size:.75rem;color:var(--soft)}
.title-block dd{margin:0}
.title-block .blank{min-height:1.4em}
`;
