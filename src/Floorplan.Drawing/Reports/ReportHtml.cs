using System.Globalization;
using System.Text;
using System.Xml;
using Floorplan.Drawing.Lettering;
using Floorplan.Drawing.Svg;
using Floorplan.Language.Text;
using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Reports;

/// <summary>A report as one page of HTML without anything beside it: no script, no link to the outside; prints on A4 and letter.</summary>
public static class ReportHtml
{
    private const int LongestText = 4000;

    private const string Style = """
        body{font:11pt/1.45 Inter,'Helvetica Neue',Helvetica,Arial,sans-serif;color:#111;background:#fff;margin:0 auto;
        max-width:56rem;padding:1rem}
        h1{font-size:1.7em;margin:.3em 0}h2{font-size:1.35em;margin:1.6em 0 .4em;border-bottom:1px solid #555;padding-bottom:.15em}
        h3{font-size:1.1em;margin:1.2em 0 .3em}
        table{border-collapse:collapse;margin:.6em 0 1.2em;width:100%}caption{text-align:left;font-weight:600;padding:.2em 0}
        th,td{border-bottom:1px solid #bbb;text-align:left;vertical-align:top;padding:.22em .6em .22em 0;overflow-wrap:anywhere}
        .scroll{overflow-x:auto}.caution{border-left:4px solid #111;padding:.2em .8em;margin:.6em 0}
        dl{margin:.5em 0 .9em;break-inside:avoid}dt{font-weight:600}dd{margin:0 0 0 1.2em}dd.from{color:#444;font-size:.9em}
        svg{width:100%;height:auto;border:1px solid #ccc}nav ol{columns:2}a{color:#0645ad}
        @media print{body{max-width:none;padding:0;font-size:9.5pt}h2{break-after:avoid}.chapter{break-before:page}nav{display:none}
        tr,.caution{break-inside:avoid}thead{display:table-header-group}}
        @page{margin:15mm}
        """;

    public static string Write(ReportDocument report)
    {
        var text = new StringBuilder();
        text.Append("<!DOCTYPE html>\n");
        var settings = new XmlWriterSettings { OmitXmlDeclaration = true, Indent = true, IndentChars = "", NewLineChars = "\n" };
        using (var html = XmlWriter.Create(text, settings))
        {
            html.WriteStartElement("html");
            html.WriteAttributeString("lang", "en");
            Head(html, report);
            html.WriteStartElement("body");
            html.WriteStartElement("main");
            Element(html, "h1", report.Title);
            foreach (string line in report.Head)
            {
                Element(html, "p", line);
            }

            Contents(html, report);
            foreach (var (number, chapter) in report.Chapters.Index())
            {
                html.WriteStartElement("section");
                html.WriteAttributeString("class", number == 0 ? "first" : "chapter");
                html.WriteAttributeString("id", Id(number));
                Element(html, "h2", chapter.Title);
                foreach (var block in chapter.Blocks)
                {
                    Write(html, block, report.Source);
                }

                html.WriteEndElement();
            }

            html.WriteEndElement();
            html.WriteEndElement();
            html.WriteEndElement();
        }

        return text.Append('\n').ToString();
    }

    private static void Head(XmlWriter html, ReportDocument report)
    {
        html.WriteStartElement("head");
        html.WriteStartElement("meta");
        html.WriteAttributeString("charset", "utf-8");
        html.WriteEndElement();
        html.WriteStartElement("meta");
        html.WriteAttributeString("name", "viewport");
        html.WriteAttributeString("content", "width=device-width, initial-scale=1");
        html.WriteEndElement();
        Element(html, "title", report.Title + ": report");
        html.WriteStartElement("style");
        html.WriteRaw(Style);
        html.WriteEndElement();
        html.WriteEndElement();
    }

    private static void Contents(XmlWriter html, ReportDocument report)
    {
        html.WriteStartElement("nav");
        html.WriteAttributeString("aria-label", "Contents");
        html.WriteStartElement("ol");
        foreach (var (number, chapter) in report.Chapters.Index())
        {
            html.WriteStartElement("li");
            html.WriteStartElement("a");
            html.WriteAttributeString("href", "#" + Id(number));
            html.WriteString(Clean(chapter.Title));
            html.WriteEndElement();
            html.WriteEndElement();
        }

        html.WriteEndElement();
        html.WriteEndElement();
    }

    private static void Write(XmlWriter html, ReportBlock block, SourceText? plan)
    {
        switch (block)
        {
            case ReportHeading heading:
                Element(html, "h3", heading.Text);
                break;
            case ReportText text:
                html.WriteStartElement("p");
                if (text.IsCaution)
                {
                    html.WriteAttributeString("class", "caution");
                }

                html.WriteString(Clean(text.Text));
                html.WriteEndElement();
                break;
            case ReportTable table:
                Write(html, table.Filled());
                break;
            case ReportWorking working:
                Write(html, working.Figure, plan);
                break;
            case ReportPicture picture:
                html.WriteRaw(SvgWriter.Write(picture.Scene));
                break;
        }
    }

    private static void Write(XmlWriter html, ReportTable table)
    {
        html.WriteStartElement("div");
        html.WriteAttributeString("class", "scroll");
        html.WriteAttributeString("tabindex", "0");
        html.WriteStartElement("table");
        if (table.Title.Length > 0)
        {
            Element(html, "caption", table.Title);
        }

        html.WriteStartElement("thead");
        html.WriteStartElement("tr");
        foreach (string head in table.Heads)
        {
            if (head.Length == 0)
            {
                Element(html, "td", "");
                continue;
            }

            html.WriteStartElement("th");
            html.WriteAttributeString("scope", "col");
            html.WriteString(Clean(head));
            html.WriteEndElement();
        }

        html.WriteEndElement();
        html.WriteEndElement();
        html.WriteStartElement("tbody");
        foreach (var row in table.Rows)
        {
            html.WriteStartElement("tr");
            foreach (string cell in row)
            {
                Element(html, "td", cell);
            }

            html.WriteEndElement();
        }

        html.WriteEndElement();
        html.WriteEndElement();
        html.WriteEndElement();
    }

    private static void Write(XmlWriter html, Figure figure, SourceText? plan)
    {
        html.WriteStartElement("dl");
        Element(html, "dt", $"{WorkingWords.Name(figure)} = {figure.Text}");
        Element(html, "dd", figure.Formula);
        Element(html, "dd", "= " + figure.Substituted);
        foreach (var input in figure.Inputs)
        {
            From(html, WorkingWords.Of(input, plan));
        }

        From(html, "by " + figure.Source.Text);
        html.WriteEndElement();
    }

    private static void From(XmlWriter html, string text)
    {
        html.WriteStartElement("dd");
        html.WriteAttributeString("class", "from");
        html.WriteString(Clean(text));
        html.WriteEndElement();
    }

    private static void Element(XmlWriter html, string name, string text)
    {
        html.WriteStartElement(name);
        html.WriteString(Clean(text));
        html.WriteFullEndElement();
    }

    private static string Id(int number) => string.Create(CultureInfo.InvariantCulture, $"chapter-{number + 1}");

    private static string Clean(string text) => SafeText.Clean(text, LongestText);
}
