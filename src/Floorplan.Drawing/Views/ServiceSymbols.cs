using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Drawing.Symbols;
using Floorplan.Model.Services;
using Floorplan.Model.Shapes;

namespace Floorplan.Drawing.Views;

/// <summary>Picks the symbol of a service point.</summary>
internal static class ServiceSymbols
{
    /// <summary>A drain is drawn at least this large on paper, mm, so that it can be seen.</summary>
    public const double SmallestDrain = 3;

    private const double Radius = 1.3;
    private const double TrenchLength = 12;
    private const double PanelLength = 5;
    private const double PanelDepth = 2;

    /// <summary>Draws it and says where its middle came to lie: wall points stand off the wall by their radius.</summary>
    public static PaperPoint Draw(SymbolBrush brush, ServicePoint service, PaperPoint at, double drainSize)
    {
        var intoRoom = service.Wall is { } wall ? wall.Opposite().Direction() : new PaperPoint(0, 0);
        var off = at + PaperShapes.Times(intoRoom, Radius);
        switch (service.Kind)
        {
            case ServiceKind.Drain when service.Form == "trench":
                TrenchDrainSymbol.Draw(brush, PaperBox.Around(at, TrenchLength, drainSize));
                return at;
            case ServiceKind.Drain:
                FloorDrainSymbol.Draw(brush, at, drainSize);
                return at;
            case ServiceKind.Water:
                WaterPointSymbol.Draw(brush, off, Radius, service.Cold, service.Hot);
                return off;
            case ServiceKind.Hose:
                // A hose hangs on its water point; beside it, so that both are seen.
                var beside = off + PaperShapes.Times(PaperShapes.Left(intoRoom), 3 * Radius);
                HoseReelSymbol.Draw(brush, beside, Radius);
                return beside;
            case ServiceKind.Heater:
                HeaterSymbol.Draw(brush, off, Radius * 1.5);
                return off;
            case ServiceKind.Panel:
                var box = service.Wall is { } on && !on.RunsEastWest()
                    ? PaperBox.Around(at + PaperShapes.Times(intoRoom, PanelDepth / 2), PanelDepth, PanelLength)
                    : PaperBox.Around(at + PaperShapes.Times(intoRoom, PanelDepth / 2), PanelLength, PanelDepth);
                PanelSymbol.Draw(brush, box);
                return box.Centre;
            case ServiceKind.Switch:
                SwitchSymbol.Draw(brush, off, Radius);
                return off;
            default:
                OutletSymbol.Draw(brush, at, service.Wall is null ? new PaperPoint(0, -1) : intoRoom, Radius);
                return off;
        }
    }

    public static string NameOf(ServicePoint service) => service.Kind switch
    {
        ServiceKind.Drain when service.Form == "trench" => "trench drain (length not to scale)",
        ServiceKind.Drain => "floor drain",
        ServiceKind.Water when service is { Cold: true, Hot: true } => "water point, cold and hot",
        ServiceKind.Water when service.Hot => "water point, hot",
        ServiceKind.Water => "water point, cold",
        ServiceKind.Hose => "hose",
        ServiceKind.Heater => "water heater",
        ServiceKind.Panel => "power panel",
        ServiceKind.Switch => "switch",
        _ => "outlet",
    };

    public static string LayerOf(ServiceKind kind) => kind switch
    {
        ServiceKind.Drain => Layers.Drainage,
        ServiceKind.Water or ServiceKind.Hose or ServiceKind.Heater => Layers.Water,
        _ => Layers.Power,
    };
}
