namespace Floorplan.Language.Text;

/// <summary>A stretch of one file. Every token, statement, model thing and finding has one.</summary>
public readonly record struct SourceSpan(SourceText Source, int Start, int Length)
{
    public int End => Start + Length;

    public LinePosition Position => Source.PositionOf(Start);

    public string Value => Source.Content.Substring(Start, Length);

    /// <summary>From the start of this span to the end of <paramref name="last"/>, which is of the same file.</summary>
    public SourceSpan To(SourceSpan last) => new(Source, Start, Math.Max(0, last.End - Start));
}
