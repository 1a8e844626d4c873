namespace Floorplan.Cli.Output.Drawings.Pages;

/// <summary>The style of the page. Words are broken only where one alone is longer than a line.</summary>
internal static class PageStyle
{
    public const string Sheet = """
        html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
        body { font-family: Inter, 'Helvetica Neue', Helvetica, Arial, sans-serif; line-height: 1.5; margin: 1rem; }
        body { color: #1a1a1a; background: #ffffff; }
        main { max-width: 75rem; margin: 0 auto; overflow-wrap: break-word; }
        h1, h2, h3, h4 { line-height: 1.25; margin: 1.5rem 0 .5rem; }
        h1 { margin-top: 0; }
        a { color: #00507d; }
        p, ol, ul { max-width: 45rem; }
        ol, ul { padding-left: 1.75rem; }
        li { margin-bottom: .75rem; }
        li p { margin: 0 0 .25rem; }
        figure { margin: 0 0 1.5rem; }
        img { display: block; width: 100%; height: auto; border: 1px solid #767676; box-sizing: border-box; }
        @media print {
          @page { margin: 15mm; }
          body { margin: 0; font-size: 10pt; color: #000000; }
          h1, h2, h3, h4 { break-after: avoid; }
          figure, li { break-inside: avoid; }
          img { max-height: 220mm; object-fit: contain; object-position: left; border: 0; }
          .plan + .plan { break-before: page; }
          .screen, nav { display: none; }
          a { color: inherit; text-decoration: none; }
          [data-file]::after { content: ": " attr(data-file); }
        }

        """;
}
