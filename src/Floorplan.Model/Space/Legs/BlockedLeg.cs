using Floorplan.Language.Quantities;
using Floorplan.Model.Flows;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Search;

namespace Floorplan.Model.Space.Legs;

/// <summary>Says why a leg has no way, and what width would have one.</summary>
internal sealed class BlockedLeg(Plan plan, Maps maps)
{
    /// <summary>Widths are tried in steps of 25 mm down to 200 mm; nobody passes less. Own assumption.</summary>
    private const double Step = 25;
    private const double Least = 200;

    private readonly Lazy<NarrowGap> gaps = new(() => new NarrowGap(plan, maps));

    /// <param name="fault">What is known to be wrong at an end of the leg; null when the way between is to be looked at.</param>
    /// <param name="find">The way of another mover, or null.</param>
    public string Sentence(Leg leg, Mover mover, string? fault, Func<Mover, Route?> find)
    {
        string start = Start(leg, mover);
        int low = (int)(Least / Step), high = (int)Math.Ceiling(mover.WidthMm / Step) - 1;
        if (high < low || find(Narrow(mover, low)) is not { } route)
        {
            return fault is not null ? $"{start}: {fault}"
                : find(mover with { WidthMm = Least, HeightMm = 1 }) is { } flat && TooLow(flat, mover) is { } what
                ? $"{start}: {what}"
                : $"{start}: no opening and no gap leads there";
        }

        // Wider movers never pass where narrower ones do not, so halving finds the widest.
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (find(Narrow(mover, middle)) is { } better)
            {
                (low, route) = (middle, better);
            }
            else
            {
                high = middle - 1;
            }
        }

        string passes = QuantityText.Length(Length.FromMillimetres(low * Step), plan.Units);
        return $"{start}: {fault ?? Tight(route, mover)}; up to {passes} wide could pass";
    }

    private static Mover Narrow(Mover mover, int steps) => mover with { WidthMm = steps * Step };

    private string Start(Leg leg, Mover mover) =>
        $"no way {QuantityText.Length(Length.FromMillimetres(mover.WidthMm), plan.Units)} wide from {leg.From.Name} to {leg.To.Name}";

    private string Tight(Route route, Mover mover)
    {
        if (route.Openings.FirstOrDefault(o => o.Width.Millimetres < mover.WidthMm) is { } door)
        {
            return $"{door.Id} is only {QuantityText.Length(door.Width, plan.Units)} wide";
        }

        var (width, _, left, right) = gaps.Value.Find(route, mover.WidthMm);
        return double.IsInfinity(width)
            ? "the way is too narrow"
            : $"only {QuantityText.Length(Length.FromMillimetres(Math.Round(width)), plan.Units)} is free between "
                + $"{left?.Id ?? "the wall"} and {right?.Id ?? "the wall"}";
    }

    private string? TooLow(Route route, Mover mover)
    {
        if (route.Openings.FirstOrDefault(o => o.Height.Millimetres < mover.HeightMm) is { } door)
        {
            return $"{door.Id} is only {QuantityText.Length(door.Height, plan.Units)} high";
        }

        var hung = maps.Obstacles.Near(route.Path.EnvelopeInternal).Select(o => o.Station)
            .Where(s => s.Bottom > Length.Zero
                && s.Bottom.Millimetres < mover.HeightMm
                && s.Footprint.Distance(route.Path) <= HalfWidth.Of(mover))
            .MinBy(s => s.Bottom);
        return hung is null ? null : $"{hung.Id} hangs only {QuantityText.Length(hung.Bottom, plan.Units)} above the floor";
    }
}
