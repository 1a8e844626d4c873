using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details.Services;

/// <summary>What a hose may say.</summary>
public static class HoseDetails
{
    public static Detail<NameSyntax> On { get; } =
        new("on", "the water point that it hangs on", ["on w1", "on w2"], c => c.Name("the name of a water point"));

    public static Detail<LengthSyntax> Length { get; } =
        Forms.Length("size", "its length", "the length of the hose", "size 7510", "size 7530");

    public static Detail<RatingSyntax> Rating { get; } =
        Ratings.Of([QuantityKind.Flow, QuantityKind.Temperature, QuantityKind.Pressure], "12 L/min 60 C", "15 L/min 60 C");

    public static IReadOnlyList<Detail> All { get; } =
        [ServiceDetails.Height, Length, GuardDetails.VacuumBreaker, GuardDetails.BackflowPreventer];
}
