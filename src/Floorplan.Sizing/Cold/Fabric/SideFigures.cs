using Floorplan.Language.Quantities;
using Floorplan.Language.Quantities.Heat;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Fabric;

/// <summary>How well one side lets heat through, with its working.</summary>
internal static class SideFigures
{
    private static readonly Source Iso = new("ISO 6946:2017, films and layers; steel counts nothing", Origin.FoundInPublicCopy);
    private static readonly Source Films = new("ISO 6946:2017; films of ceiling and floor from memory", Origin.FoundInPublicCopy);
    private static readonly Source Usual = new(
        "unlined walls are rare: linings and partitions are sandwich panels, floors with falls are screed, others plywood",
        Origin.OwnAssumption);
    private static readonly Source Plywood = new("plywood of 28 mm, builders' specifications", Origin.FoundInPublicCopy);

    /// <param name="of">Id of the room.</param>
    public static Figure Transmittance(Workings w, RoomSide side, string of)
    {
        var units = w.Units;
        var build = side.Build;
        string films = HeatText.Resistance(side.Films, units);
        string core = HeatText.Thick(build.Core, units);
        string conductivity = HeatText.Conductivity(build.Conductivity.Value, units);
        double plywood = BuildUp.ContainerFloor * 1000;
        string more = build.BareFloor
            ? $" + {HeatText.Thick(plywood, units)} / {HeatText.Conductivity(Conductivity.Plywood.Value, units)}"
            : "";
        FigureInput[] inputs =
        [
            Material(build),
            FigureInput.Said("thickness", QuantityText.Length(build.Thickness, units), build.Span),
            FigureInput.Taken("conductivity", conductivity, build.Conductivity.Source),
            FigureInput.Taken("films on both faces", films, Films),
            .. build.BareFloor
                ? [FigureInput.Taken("floor of the box", HeatText.Thick(plywood, units), Plywood)]
                : Array.Empty<FigureInput>(),
        ];
        return w.Of(
            $"U of {side.Name}", of, side.Transmittance, QuantityKind.Ratio, HeatText.Transmittance(side.Transmittance, units),
            "1 / (films + thickness of the core / conductivity)", $"1 / ({films} + {core} / {conductivity}{more})", Iso, inputs);
    }

    private static FigureInput Material(BuildUp build) => build.IsKnown
        ? FigureInput.Said("material", $"{build.Said}, taken as {build.Material.Name}", build.Span)
        : FigureInput.Taken(
            "material",
            (build.Said.Length == 0 ? "not said" : $"{build.Said} is not known") + $", taken as {build.Material.Name}",
            Usual);
}
