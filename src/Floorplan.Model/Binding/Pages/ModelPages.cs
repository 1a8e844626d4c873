using Floorplan.Language.Diagnostics.Pages;

namespace Floorplan.Model.Binding.Pages;

/// <summary>A page for every code that making a plan of a text can give.</summary>
public static class ModelPages
{
    public static IReadOnlyList<DiagnosticPage> All { get; } =
    [
        .. NamePages.All, .. ShellPages.All, .. RoomPages.All, .. OpeningPages.All, .. PlacePages.All, .. KindPages.All,
        .. RatesPages.All, .. WorkPages.All,
    ];
}
