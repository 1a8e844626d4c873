using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Weights.Crane;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights.Sizes;

/// <summary>How a crane and the floor carry a container.</summary>
internal static class LiftRows
{
    /// <summary>
    /// A weight that lies farther off the middle than this share of the length makes the box hang askew. CTU Code 2014, annex 7, 3.1.4:
    /// 5 % in general, 10 % where the gear can take it.
    /// </summary>
    private const double Askew = 0.05;

    private static readonly string Ctu = new Source("CTU Code 2014, annex 7, 3.1.4", Origin.FoundInSecondaryCopy).Text;

    public static void Add(PlanFacts facts, Workings work, List<SizeRow> rows, List<SizeTable> tables, List<string> cautions)
    {
        var lifts = facts.CraneLifts;
        foreach (var figure in lifts.SelectMany(l => l.Figures))
        {
            work.Add(figure);
        }

        if (lifts is [var empty, ..])
        {
            rows.Add(new SizeRow("centre of weight", empty.Centre.Text, $"empty; {empty.OffShare.Text} of the length", empty.Centre.East));
            rows.Add(SizeRow.Of("heaviest corner", empty.Heaviest, $"lifted empty; the lightest {empty.Lightest.Text}"));
            rows.Add(SizeRow.Of(
                "worst leg", empty.WorstLeg,
                $"legs of {empty.Legs.Text} at {empty.Angle.Text}; {empty.PairLeg.Text} where two carry all"));
            tables.Add(Corners(lifts));
            cautions.Add(
                "Lifting can kill: licensed lifting crews weigh the box at its corners, choose the gear and decide. Four legs on a stiff "
                + "box never carry alike; count on two.");
            cautions.AddRange(lifts.Where(l => l.OffShare.Value > Askew).Take(1).Select(l =>
                $"The weight lies {l.OffShare.Text} of the length off the middle when {(l.IsFull ? "full" : "empty")}: the box hangs askew "
                + $"and can slip ({Ctu}: 5 % in general, 10 % where the gear takes it). Tell the crane crew, or move heavy things."));
        }

        if (CrossMember.Of(facts, work) is { } member && facts.FloorLoad is { Load: var load })
        {
            work.Add(load);
            rows.Add(SizeRow.Of("floor, heaviest metre", load, $"{member.Text} on one cross-member"));
        }
    }

    private static SizeTable Corners(IReadOnlyList<CraneLift> lifts)
    {
        string[] heads = ["On a crane", "Together", "South-west", "South-east", "North-west", "North-east", "Worst leg", "Two carry all"];
        return new SizeTable(
            "Corners", heads,
            [
                .. lifts.Select(l => (IReadOnlyList<string>)
                [
                    l.IsFull ? "full, as it stands" : "empty", l.Total.Text, .. l.Corners.Select(c => c.Text), l.WorstLeg.Text,
                    l.PairLeg.Text,
                ]),
            ],
            [.. lifts.SelectMany(l => (IEnumerable<Figure>)[l.Total, .. l.Corners, l.WorstLeg, l.PairLeg])]);
    }
}
