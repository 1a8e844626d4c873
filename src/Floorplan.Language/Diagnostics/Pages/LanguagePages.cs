namespace Floorplan.Language.Diagnostics.Pages;

/// <summary>A page for every code that reading a text can give.</summary>
public static class LanguagePages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } = [.. WordPages.All, .. FigurePages.All, .. BoundPages.All];
}
