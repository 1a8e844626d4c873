using Floorplan.Language.Quantities;
using Floorplan.Model.Shells;
using Floorplan.Sizing.Sizes;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Weights.Sizes;

/// <summary>What the unit weighs empty, full and at work, and how crane, floor, hitch and axles carry it.</summary>
internal static class WeightSizes
{
    /// <summary>Null for a shed, which is neither lifted nor towed.</summary>
    public static SizedSubject? Of(PlanFacts facts)
    {
        var plan = facts.Plan;
        if (plan.Shell.Kind == ShellKind.Shed)
        {
            return null;
        }

        var work = new Workings(plan.Units);
        var (rows, tables) = (new List<SizeRow>(), new List<SizeTable>());
        List<NotSaid> missing = [.. Missing(facts)];
        var weight = facts.Weight;
        foreach (var figure in weight.Parts.SelectMany(p => new[] { p.Empty, p.Full }).Distinct())
        {
            work.Add(figure);
        }

        work.Add(weight.Empty);
        work.Add(weight.Full);
        var rated = RatedWeight.Of(plan, work);
        string part = weight.IsWhole ? "" : "without the bare shell; ";
        rows.Add(SizeRow.Of(
            "empty, as it travels", weight.Empty, part + (weight.BuiltIn is { } built ? $"of it built in {built.Text}" : "")));
        rows.Add(SizeRow.Of("full", weight.Full, rated is null ? "the plate is not said" : $"of {rated.Text} rated"));
        AddAtWork(facts, work, rows);
        tables.Add(Parts(facts));
        var cautions = new List<string>();
        if (plan.Shell.Kind == ShellKind.Container)
        {
            LiftRows.Add(facts, work, rows, tables, cautions);
        }
        else
        {
            TrailerRows.Add(facts, work, rows, tables, missing, cautions);
        }

        return new SizedSubject("Weight", rows)
        {
            Figures = work.Figures,
            Tables = tables,
            Missing = missing,
            Cautions = cautions,
        };
    }

    private static void AddAtWork(PlanFacts facts, Workings work, List<SizeRow> rows)
    {
        var atWork = facts.WorkingWeight;
        foreach (var figure in atWork.Figures)
        {
            work.Add(figure);
        }

        string[] with =
        [
            .. atWork.People is { } people ? [$"people {people.Text}"] : Array.Empty<string>(),
            .. atWork.Product is { } product ? [$"product {product.Text}"] : Array.Empty<string>(),
        ];
        if (with.Length > 0)
        {
            rows.Add(SizeRow.Of("at work", atWork.Together, "with " + string.Join(" and ", with)));
        }
    }

    private static IEnumerable<NotSaid> Missing(PlanFacts facts)
    {
        var plan = facts.Plan;
        var without = plan.Stations.Where(s => facts.Items.Find(s) is null).ToList();
        if (without.Count > 0)
        {
            string more = without.Count > 1 ? FormattableString.Invariant($" and {without.Count - 1} more") : "";
            yield return new NotSaid(
                $"weight of {without[0].Caption}{more}",
                plan.Units == UnitSystem.Metric ? "weight 60 kg empty, 90 kg full" : "weight 130 lb empty, 200 lb full", without[0].Span);
        }

        if (!facts.Weight.IsWhole)
        {
            yield return new NotSaid(
                "weight of the bare shell",
                plan.Units == UnitSystem.Metric ? "weight 1400 kg empty, 3500 kg rated" : "weight 3000 lb empty, 7700 lb rated",
                plan.Shell.Span);
        }

        if (plan.Day is null)
        {
            yield return new NotSaid("people and product", "day", plan.Head.Span);
        }
    }

    private static SizeTable Parts(PlanFacts facts)
    {
        var weight = facts.Weight;
        return new SizeTable(
            "Weights", ["What", "Empty", "Full"],
            [
                .. weight.Parts.Select(p => (IReadOnlyList<string>)[p.Name, p.Empty.Text, p.Full.Text]),
                ["together", weight.Empty.Text, weight.Full.Text],
            ],
            [.. weight.Parts.SelectMany(p => new[] { p.Empty, p.Full }).Distinct(), weight.Empty, weight.Full]);
    }
}
