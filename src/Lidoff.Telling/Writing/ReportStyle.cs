namespace Lidoff.Telling.Writing;

/// <summary>The look of a report: paper and ink, one teal, amber for doubt, brick for quarrels; a dark twin; print sizes.</summary>
internal static class ReportStyle
{
    public const string Css = """
        :root{--paper:#F7F5F0;--card:#FFFEFB;--ink:#1D2430;--soft:#4F5866;--line:#DDD8CC;--teal:#0B6E6E;--amber:#8F4407;--amberbg:#FBF0DE;--brick:#B3261E;color-scheme:light dark}
        @media (prefers-color-scheme:dark){:root{--paper:#14181D;--card:#1B2026;--ink:#E8E6DF;--soft:#A9B2BE;--line:#2F363F;--teal:#5CC4BC;--amber:#F0B35E;--amberbg:#33270F;--brick:#FF8A80}}
        *{box-sizing:border-box}
        body{margin:0 auto;max-width:64rem;padding:1rem 1rem 4rem;background:var(--paper);color:var(--ink);font:16px/1.55 system-ui,"DejaVu Sans",sans-serif;font-variant-numeric:tabular-nums;overflow-wrap:anywhere}
        h1{font-size:1.7rem;line-height:1.2;margin:.6rem 0}h2{font-size:1.25rem;margin:2.2rem 0 .6rem;border-bottom:1px solid var(--line);padding-bottom:.2rem}h3{font-size:1rem;margin:0 0 .4rem}
        a{color:var(--teal)}a:focus-visible{outline:2px solid var(--teal);outline-offset:2px}
        nav ul{display:flex;flex-wrap:wrap;gap:.3rem 1.2rem;list-style:none;padding:0;margin:.4rem 0}
        .notice{display:inline-block;margin:0;padding:.1rem .8rem;border-radius:99px;color:var(--amber);background:var(--amberbg)}
        .caution{border-left:4px solid var(--amber);background:var(--amberbg);padding:.5rem .8rem;border-radius:0 8px 8px 0}
        .value{font-weight:600}.grade{font-size:.8em;color:var(--soft);text-decoration:none;border:1px solid var(--line);border-radius:4px;padding:0 .25em}
        .mark,code{font-family:ui-monospace,"DejaVu Sans Mono",monospace;font-size:.93em}
        .because{background:var(--card);border:1px solid var(--line);border-radius:10px;padding:.8rem 1rem;margin:.8rem 0}
        .because:target{border-color:var(--teal);box-shadow:0 0 0 2px var(--teal)}
        .scroll{overflow-x:auto;margin:.8rem 0}table{border-collapse:collapse;width:100%;font-size:.94rem}caption{text-align:left;color:var(--soft);padding:.3rem 0}
        td,th{padding:.35rem .5rem;text-align:left;border-top:1px solid var(--line);vertical-align:top;overflow-wrap:normal}th{color:var(--soft);font-size:.85rem}td.n,th.n{text-align:right;white-space:nowrap}
        figure{margin:1rem 0}figure svg{display:block;max-width:100%;height:auto;max-height:80vh;background:var(--card);border:1px solid var(--line);border-radius:8px}figcaption{color:var(--soft);font-size:.94rem;padding:.3rem 0}
        .reference{stroke:#E8C547;stroke-width:3;fill:none;vector-effect:non-scaling-stroke}.reference-words{fill:#FFF3BF;stroke:#1D2430;stroke-width:.25em;paint-order:stroke;font-family:system-ui,"DejaVu Sans",sans-serif}
        .measured{stroke:#4FE3D6;stroke-width:3;fill:none;vector-effect:non-scaling-stroke}.measured-words{fill:#D9FFFB;stroke:#1D2430;stroke-width:.25em;paint-order:stroke;font-family:system-ui,"DejaVu Sans",sans-serif}
        .leader{stroke:#FFFFFF;stroke-width:2;fill:none;vector-effect:non-scaling-stroke}.leader-words{fill:#FFFFFF;stroke:#1D2430;stroke-width:.25em;paint-order:stroke;font-family:system-ui,"DejaVu Sans",sans-serif;font-weight:600}
        .margin{fill:#1D2430}.bar{stroke:#FFFFFF;stroke-width:5;vector-effect:non-scaling-stroke}.bar-ground{fill:#1D2430;fill-opacity:.72}.bar-words{fill:#FFFFFF;font-family:system-ui,"DejaVu Sans",sans-serif}
        .diagram-box{fill:var(--card);stroke:var(--ink);stroke-width:1.5}.diagram-box.source{stroke:var(--teal);stroke-width:3}.diagram-box.converter{stroke:var(--teal)}.diagram-box.bus,.diagram-box.rail{stroke-dasharray:2 3}
        .diagram-line{stroke:var(--ink);stroke-width:1.5;fill:none}.diagram-line.supply{stroke:var(--teal)}.diagram-line.bus{stroke-width:3}.diagram-line.guess{stroke-dasharray:6 5;stroke:var(--amber)}.diagram-name,.diagram-words,.diagram-label{fill:var(--ink);font-family:system-ui,"DejaVu Sans",sans-serif}.diagram-name{font-weight:600}.diagram-words,.diagram-label{fill:var(--soft)}
        @media (max-width:40rem){.scroll{overflow-x:visible}table,tbody,tr,td,caption{display:block;width:auto}thead{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}tr{border-top:1px solid var(--line);padding:.35rem 0}td,td.n{border:0;padding:.1rem 0;text-align:left;white-space:normal;overflow-wrap:anywhere}td:empty{display:none}td::before{content:attr(data-h) ": ";color:var(--soft);font-size:.85rem}}
        @media print{body{max-width:none;background:#fff;color:#000}nav{display:none}.because{break-inside:avoid}}

        """;
}
