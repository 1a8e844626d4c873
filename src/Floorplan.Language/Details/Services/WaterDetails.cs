using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Details.Services;

/// <summary>What a water point may say.</summary>
public static class WaterDetails
{
    public static Detail<WordSyntax> Cold { get; } = TermDetail.Flag("cold", "it brings cold water");

    public static Detail<WordSyntax> Hot { get; } = TermDetail.Flag("hot", "it brings hot water");

    public static Detail<LengthSyntax> Size { get; } = Forms.Length("size", "the size of its pipe", "a size", "size 20", "size 25");

    public static Detail<RatingSyntax> Rating { get; } =
        Ratings.Of([QuantityKind.Flow, QuantityKind.Temperature, QuantityKind.Pressure], "12 L/min 60 C", "15 L/min 60 C");

    public static IReadOnlyList<Detail> All { get; } =
        [Cold, Hot, ServiceDetails.Place, ServiceDetails.Height, Size, GuardDetails.VacuumBreaker, GuardDetails.BackflowPreventer];
}
