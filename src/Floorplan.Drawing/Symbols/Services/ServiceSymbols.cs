using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Model;
using Floorplan.Model.Services;

namespace Floorplan.Drawing.Symbols.Services;

/// <summary>
/// The symbols of all service points. The file of a symbol adds it by a field of its own, so that a new symbol touches no other file.
/// </summary>
internal static partial class ServiceSymbols
{
    /// <summary>A drain or hole is drawn at least this large on paper, mm, so that it can be seen.</summary>
    public const double Smallest = 3;

    // Made by the first field that adds to it: fields of several files are set in no fixed order.
    private static Dictionary<Type, ServiceSymbol>? symbols;

    /// <summary>Null for services of whole rooms: they have no point to mark.</summary>
    public static ServiceSymbol? Of(ServicePoint point) => symbols!.GetValueOrDefault(point.GetType());

    /// <summary>The points that have a symbol, of one sheet or, when null, of all.</summary>
    public static IEnumerable<ServicePoint> On(ServiceSheet? sheet, Plan plan) =>
        plan.Services.Where(s => Of(s) is { } symbol && (sheet is not { } wanted || symbol.Sheets.HasFlag(wanted)));

    public static string NameOf(ServicePoint point) => Of(point)?.Name(point) ?? point.Noun;

    public static string LayerOf(ServicePoint point) => Of(point)?.Layer ?? Layers.Power;

    /// <inheritdoc cref="ServiceSymbol.Draw"/>
    public static PaperPoint Draw(SymbolBrush brush, ServicePoint point, PaperPoint at, double size)
        => Of(point)?.Draw(brush, point, at, size) ?? at;

    private static ServiceSymbol Add<T>(ServiceSymbol<T> symbol)
        where T : ServicePoint
    {
        (symbols ??= []).Add(typeof(T), symbol);
        return symbol;
    }
}
