using Floorplan.Language.Quantities;
using Floorplan.Model.Services;
using Floorplan.Model.Stations;
using Floorplan.Sizing.Uses;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Water;

/// <summary>Which point serves one use of water or drain, and why that one.</summary>
public sealed class Served
{
    private readonly Lazy<Figure?> branch;

    internal Served(ServiceUse use, ServicePoint? point, SupplyChoice choice, UnitSystem units)
    {
        Use = use;
        Point = point;
        Choice = choice;
        branch = new Lazy<Figure?>(() => point is null || use.Station is not { } station ? null : Length(station, point, units));
    }

    public ServiceUse Use { get; }

    /// <summary>A water point, a heater or a drain; null when none serves it, or when it comes straight from the main.</summary>
    public ServicePoint? Point { get; }

    public SupplyChoice Choice { get; }

    /// <summary>From the edge of a station to its point, straight on plan, in mm; null without a point and for hoses and heaters.</summary>
    public Figure? Branch => branch.Value;

    private Figure Length(Station station, ServicePoint point, UnitSystem units)
    {
        double mm = station.Footprint.Distance(Model.Shapes.Shape.Factory.CreatePoint(point.At.Coordinate));
        return new Figure
        {
            Name = Use.Kind switch
            {
                NeedKind.ColdWater => "way to cold water",
                NeedKind.HotWater => "way to hot water",
                _ => "way to the drain"
            },
            Of = station.Id,
            Value = mm,
            Kind = QuantityKind.Length,
            Text = QuantityText.Distance(mm, units),
            Inputs =
            [
                FigureInput.Said(station.Id, "its outline", station.Span),
                FigureInput.Said(
                    point.Id, $"{QuantityText.Bare(point.At.X, units)}, {QuantityText.Bare(point.At.Y, units)}", point.Span),
            ],
            Formula = "shortest straight line on plan from the outline to the point",
            Substituted = $"from {station.Id} to {point.Id}, {Choice.Reason()}",
            Source = Supply.Origin,
        };
    }
}
