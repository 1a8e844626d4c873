using Floorplan.Sizing.Weights;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Cold.Fabric;

/// <summary>
/// How well the core of a layer conducts heat, W/mK; boards and sheets on it count nothing (own assumption, on the safe side).
/// </summary>
internal sealed record Conductivity(double Value, Source Source)
{
    private static readonly Source Handbook = new("refrigeration handbook, conductivities in SI units", Origin.FoundInPublicCopy);
    private static readonly Source Iso10456 = new("ISO 10456, building materials", Origin.FromMemory);
    private static readonly Source Unsaid = new(
        "cut foam or glass fibre 0.036 W/mK, refrigeration handbook; that it is no better is an own assumption", Origin.OwnAssumption);

    private static readonly Dictionary<string, Conductivity> ByName = new()
    {
        ["sandwich panel"] = new(0.025, new Source("polyurethane foam, refrigeration handbook", Origin.FoundInPublicCopy)),
        ["foam"] = new(0.036, Handbook),
        ["mineral wool"] = new(0.039, Handbook),
        ["plywood"] = new(0.116, Handbook),
        ["softwood"] = new(0.13, new Source("EN ISO 10077-2, softwood", Origin.FoundInPublicCopy)),
        ["cement screed"] = new(1.0, Iso10456),
        ["concrete"] = new(2.0, Iso10456),
        ["terrazzo"] = new(1.8, Iso10456),
        ["gypsum"] = new(0.25, Iso10456),
    };

    /// <summary>The bare floor of a container: plywood.</summary>
    public static Conductivity Plywood => ByName["plywood"];

    /// <summary>A board on insulation is as good as its insulation.</summary>
    public static Conductivity Of(LayerMaterial material) => ByName.GetValueOrDefault(material.Name) ?? new Conductivity(0.036, Unsaid);
}
