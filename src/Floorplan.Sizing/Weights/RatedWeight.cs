using Floorplan.Language.Quantities;
using Floorplan.Model;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights;

/// <summary>What a unit may weigh in all: as its plate says, or for a container as boxes of its size are usually plated.</summary>
public static class RatedWeight
{
    /// <summary>Boxes of 20 ft to 45 ft, kg.</summary>
    public const double Box = 30_480;

    /// <summary>Boxes of 10 ft, kg.</summary>
    public const double SmallBox = 10_160;

    /// <summary>Between boxes of 10 and 20 ft, outside length in mm.</summary>
    private const double Small = 4500;

    /// <summary>For rules that judge by it.</summary>
    public static Source Usual { get; } = new(
        "ISO 668 rating of 20 ft to 45 ft boxes 30 480 kg, as most are still plated; the plate of the real box prevails",
        Origin.FoundInPublicCopy);

    /// <inheritdoc cref="Usual"/>
    public static Source UsualSmall { get; } = new("ISO 668 rating of 10 ft boxes 10 160 kg", Origin.FoundInPublicCopy);

    private static readonly Source Said = new("the plate, as the plan says it", Origin.CommonPractice);

    public static bool IsSmall(Shell shell) => shell.Outside.EnvelopeInternal.Width < Small;

    /// <summary>Null for a shed, and for a trailer whose plate the plan does not say.</summary>
    internal static Figure? Of(Plan plan, Workings work)
    {
        var shell = plan.Shell;
        bool small = IsSmall(shell);
        (double Kilograms, Source Source)? rated = shell.Loads.RatedKg is { } said ? (said, Said)
            : shell.Kind != ShellKind.Container ? null
            : small ? (SmallBox, UsualSmall) : (Box, Usual);
        if (rated is not { } found)
        {
            return null;
        }

        string text = work.Text(found.Kilograms, Measure.Mass);
        return work.Of(
            "rated weight", Figure.WholePlan, found.Kilograms, Measure.Mass, "weight on the plate", text, found.Source,
            shell.Loads.RatedKg is null
                ? FigureInput.Taken("weight rated", text, found.Source)
                : FigureInput.Said("weight rated", text, shell.Span));
    }
}
