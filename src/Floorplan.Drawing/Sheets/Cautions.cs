using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;

namespace Floorplan.Drawing.Sheets;

/// <summary>The cautions that go with what a sheet shows.</summary>
internal static class Cautions
{
    public const string LocalCode =
        "Local codes and licensed practice prevail over this sheet. Confirm every requirement with the authority that inspects the unit.";

    /// <summary>In C, common practice, no source.</summary>
    private const double Scalding = 50;

    public static string Water(UnitSystem units)
        => "Runs are diagrams: which point serves which use, not a route to build from. Pipe sizes are for planning: "
            + "a licensed plumber settles pipes, hot water and outfall. Water over "
            + QuantityText.Of(Scalding, Measure.Temperature, units) + " scalds; fit backflow protection where the code asks for it.";

    /// <summary>A shed may be of steel or not.</summary>
    public static string Power(ShellKind kind) =>
        "Power can kill. A licensed electrician designs and does the work; "
            + $"{(kind == ShellKind.Shed ? "steel parts of the shed are" : "the steel shell is")} bonded to earth, and outlets in wet "
            + "rooms have a device that cuts off when current goes through a person.";

    public const string Flow = "The routes are the shortest ways that fit on the drawn floor. They do not replace a written hazard plan.";

    public const string Pace =
        "A pace is no order to hurry: with blades, hot water, wet floors and loads people get hurt when they must keep up with a line. Let "
            + "those who do the work say what they can keep up all day.";

    private const string ClosedBox =
        "A closed steel box is a confined space while it is being welded, lined or coated: ventilate it and never work in it alone.";

    /// <summary>For sheets that steel is cut and welded by; a shed is no closed steel box.</summary>
    public static IReadOnlyList<string> Building(ShellKind kind)
        => kind == ShellKind.Shed ? [Cutting(kind), LocalCode] : [Cutting(kind), ClosedBox, LocalCode];

    private static string Cutting(ShellKind kind) => kind switch
    {
        ShellKind.Container
            => "Cutting a container wall, post or rail weakens it: have each opening and its frame checked by a structural engineer "
                + "before cutting, and again before lifting.",
        ShellKind.Trailer
            => "Cutting a trailer wall or moving its load changes how it carries and tows: have the frame, the axle loads and each "
                + "opening checked before cutting and before towing.",
        _ => "Openings and hung loads change how the frame carries: have them checked by a structural engineer before cutting or hanging.",
    };
}
