using System.Globalization;
using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Gains;

/// <summary>One whole number of a day that is tried from one value to another.</summary>
/// <param name="Name">As asked for: <c>crew.kill</c>, <c>cones.holds</c>.</param>
/// <param name="Make">The line with a value.</param>
public sealed record VariedFigure(string Name, int From, int To, Func<ProductLine, int, ProductLine> Make)
{
    private const string Crew = "crew";
    private const int Most = 100_000;

    public int Count => To - From + 1;

    /// <summary>The figure, or the sentence that says what is wrong with it.</summary>
    /// <param name="asked">Such as <c>crew.kill=2..8</c>.</param>
    public static (VariedFigure? Figure, string? Problem) Of(string asked, ProductLine line)
    {
        string[] sides = asked.Split('=', 2);
        string[] ends = sides.Length == 2 ? sides[1].Split("..", 2) : [];
        if (ends.Length != 2 || Number(ends[0]) is not { } from || Number(ends[1]) is not { } to || to < from)
        {
            return (
                null,
                $"`{asked}` is not read: write a name and two whole numbers from 1 on, such as crew.kill=2..8 or cones.holds=6..24");
        }

        string[] name = sides[0].Split('.', 2);
        if (name[0] == Crew)
        {
            return OfCrew(name.Length == 2 ? name[1] : null, sides[0], from, to, line);
        }

        int step = line.Steps.Index().Where(s => s.Item.Name == name[0]).Select(s => s.Index).DefaultIfEmpty(-1).First();
        return step < 0 ? (null, $"nothing called `{name[0]}` is on the way of the product; there are {Names(line)}")
            : name.Length < 2 || Change(name[1]) is not { } change
                ? (null, $"`{sides[0]}` is not varied: of {name[0]} holds, batch, waits and workers can be")
                : (new VariedFigure(sides[0], from, to, (l, n) => l.WithStep(step, s => change(s, n))), null);
    }

    private static (VariedFigure? Figure, string? Problem) OfCrew(string? name, string asked, int from, int to, ProductLine line)
    {
        int crew = name is null && line.Crews.Count == 1
            ? 0
            : line.Crews.Index().Where(c => c.Item.Name == name).Select(c => c.Index).DefaultIfEmpty(-1).First();
        return crew < 0
            ? (null, $"which crew is meant: {string.Join(", ", line.Crews.Select(c => $"{Crew}.{c.Name}"))}?")
            : (new VariedFigure(asked, from, to, (l, n) => l.WithPeople(crew, _ => n)), null);
    }

    private static Func<LineStep, int, LineStep>? Change(string detail) => detail switch
    {
        "holds" => (s, n) => s with { Places = Math.Max(1, n / s.Batch) },
        "batch" => (s, n) => s with { Batch = n, Least = n },
        "waits" => (s, n) => s with { Waits = n },
        "workers" => (s, n) => s with { Hands = n, Places = s is { Stay.Mean: 0, Batch: 1 } ? n : s.Places },
        _ => null,
    };

    private static string Names(ProductLine line)
        => string.Join(", ", line.Steps.Where(s => s.SameAs < 0 && s.Work.Mean + s.Stay.Mean > 0).Select(s => s.Name));

    private static int? Number(string text) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number is >= 1 and <= Most
            ? number
            : null;
}
