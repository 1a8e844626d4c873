using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Space;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Carrying;

/// <summary>How far things and people go: leg by leg, and for what hands carry from where it is taken up to where it is set down.</summary>
/// <param name="ByLeg">In mm; legs without a way are left out.</param>
/// <param name="Carries">In the order written.</param>
/// <param name="Shared">How far two ways run together where they meet, in mm; its text is <c>cross</c> for less than a touch.</param>
public sealed record Ways(
    IReadOnlyDictionary<LegRoute, Figure> ByLeg, IReadOnlyList<Carry> Carries, IReadOnlyDictionary<Meeting, Figure> Shared)
{
    private readonly Dictionary<LegRoute, Carry> ending = Carries.ToDictionary<Carry, LegRoute>(
        c => c.Legs[^1], ReferenceEqualityComparer.Instance);

    /// <summary>The carry by hand that ends with a leg; null when none does.</summary>
    public Carry? EndingWith(LegRoute leg) => ending.GetValueOrDefault(leg);

    private static readonly Source Shortest = new("shortest way over the free floor", Origin.CommonPractice);
    private static readonly Source Added = new("who carries through a door does not set down there", Origin.OwnAssumption);

    internal static Ways Of(PlanFacts facts)
    {
        var units = facts.Plan.Units;
        var byLeg = new Dictionary<LegRoute, Figure>(ReferenceEqualityComparer.Instance);
        var carries = new List<Carry>();
        var open = new List<LegRoute>();
        foreach (var (i, leg) in facts.Space.LegRoutes.Index())
        {
            if (leg.Route is not null)
            {
                byLeg[leg] = OfLeg(leg, i + 1, units);
            }

            if (open.Count > 0 && !Continues(open[^1], leg))
            {
                Close();
            }

            if (leg is { Route: not null, Leg.Carriage.Kind: CarriageKind.Hand })
            {
                open.Add(leg);
            }
        }

        Close();
        return new Ways(byLeg, carries, SharedBy(facts, units));

        void Close()
        {
            if (open.Count > 0)
            {
                carries.Add(new Carry([.. open], Whole([.. open.Select(l => byLeg[l])], open, units)));
            }

            open.Clear();
        }
    }

    /// <summary>The next leg of the same line, begun at the door that the last one ended at.</summary>
    private static bool Continues(LegRoute before, LegRoute leg) =>
        ReferenceEquals(before.Flow, leg.Flow) && before.Leg.Chain == leg.Leg.Chain
        && leg is { Route: not null, Leg.Carriage.Kind: CarriageKind.Hand } && before.Leg.To is OpeningStop { Opening.IsWalkable: true };

    private static Dictionary<Meeting, Figure> SharedBy(PlanFacts facts, UnitSystem units)
    {
        var shared = new Dictionary<Meeting, Figure>(ReferenceEqualityComparer.Instance);
        foreach (var (i, meeting) in facts.Space.Meetings.Index())
        {
            string text = meeting.SharedMm > Touch.ToleranceMm ? QuantityText.Distance(meeting.SharedMm, units) : "cross";
            shared[meeting] = new Figure
            {
                Name = FormattableString.Invariant($"floor shared at meeting {i + 1}"),
                Of = Figure.WholePlan,
                Value = meeting.SharedMm,
                Kind = QuantityKind.Length,
                Text = text,
                Inputs = [.. new[] { meeting.First.Leg, meeting.Second.Leg }.Select(
                    l => FigureInput.Said("leg", $"{l.From.Name} -> {l.To.Name}", l.Span))],
                Formula = "length of the stretch on which both ways run",
                Substituted = text,
                Source = Shortest,
            };
        }

        return shared;
    }

    private static Figure OfLeg(LegRoute leg, int number, UnitSystem units) => new()
    {
        Name = FormattableString.Invariant($"way of leg {number}, {leg.Leg.From.Name} to {leg.Leg.To.Name}"),
        Of = Figure.WholePlan,
        Value = leg.Route!.LengthMm,
        Kind = QuantityKind.Length,
        Text = QuantityText.Distance(leg.Route.LengthMm, units),
        Inputs = [FigureInput.Said("leg", $"{leg.Leg.From.Name} -> {leg.Leg.To.Name}", leg.Leg.Span)],
        Formula = "length of the shortest way",
        Substituted = FormattableString.Invariant($"a way of {leg.Route.Path.NumPoints} points"),
        Source = Shortest,
    };

    private static Figure Whole(IReadOnlyList<Figure> legs, IReadOnlyList<LegRoute> of, UnitSystem units) =>
        legs.Count == 1 ? legs[0] : new Figure
        {
            Name = $"carry by hand, {string.Join(" to ", of.Select(l => l.Leg.From.Name))} to {of[^1].Leg.To.Name}, "
                + $"begun as {legs[0].Name}",
            Of = Figure.WholePlan,
            Value = legs.Sum(l => l.Value),
            Kind = QuantityKind.Length,
            Text = QuantityText.Distance(legs.Sum(l => l.Value), units),
            Inputs = [.. legs.Select(FigureInput.Of)],
            Formula = "sum of the legs from where it is taken up to where it is set down",
            Substituted = WorkingText.Sum([.. legs.Select(l => l.Text)]),
            Source = Added,
        };
}
