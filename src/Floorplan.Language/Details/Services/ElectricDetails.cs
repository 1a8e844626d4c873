using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Words.Terms;

namespace Floorplan.Language.Details.Services;

/// <summary>What several electric points may say.</summary>
public static class ElectricDetails
{
    public static Detail<TermSyntax<Phases>> Phases { get; } = TermDetail.OneOf<Phases>("the phases of its supply");

    public static Detail<WordSyntax> Sealed { get; } = TermDetail.Flag("sealed", "closed against jets of water");

    public static Detail<TextSyntax> Circuit { get; } = new(
        "circuit", "the number of the circuit that it is on", ["circuit 4", "circuit 7"], c => c.Words("the number of a circuit"));

    public static Detail<RatingSyntax> Rating { get; } =
        Ratings.Of([QuantityKind.Current, QuantityKind.Voltage, QuantityKind.Power], "16 A 230 V", "20 A 230 V");
}
