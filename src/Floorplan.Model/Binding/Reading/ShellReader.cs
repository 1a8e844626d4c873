using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Text;
using Floorplan.Model.Shapes;
using Floorplan.Model.Shells;
using Floorplan.Model.Shells.Containers;
using Floorplan.Model.Shells.Trailers;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads the <c>shell</c> statement. Null, with a report, when there is no usable one.</summary>
internal sealed class ShellReader(Reports reports)
{
    /// <summary>More axles than this is a slip; own bound.</summary>
    private const int MostAxles = 6;

    /// <summary>A finished room smaller than this cannot be stood in; own bound.</summary>
    private static readonly Length LeastInside = Length.FromMillimetres(300);

    private static readonly Length Largest = Length.FromMillimetres(1_000_000);

    public BuiltShell? Read(ShellStatement statement)
    {
        var notes = NotesOf(statement);
        var built = statement.Kind?.Text switch
        {
            "container" => Container(statement, notes),
            "trailer" => Trailer(statement, notes),
            "shed" => new ShedReader(reports).Read(statement, notes),
            _ => null,
        };
        if (built is null)
        {
            return null;
        }

        if (statement.Weight is { Empty.Value: var empty, Rated.Value: var rated } && rated.Base < empty.Base)
        {
            reports.Error(
                "full-lighter-than-empty",
                $"the shell is rated for {QuantityText.Of(rated, reports.Units)} and weighs {QuantityText.Of(empty, reports.Units)} empty",
                statement.HeadSpan,
                "swap the two weights, or mend the one that is wrong");
        }

        if (built.Finished.IsEmpty
            || built.Finished.Bounds.Width < LeastInside
            || built.Finished.Bounds.Depth < LeastInside
            || built.Shell.CeilingHeight < LeastInside)
        {
            reports.Error(
                "shell-too-small", "walls and linings leave no room inside this shell", statement.HeadSpan,
                "make the shell larger or the linings thinner");
            return null;
        }

        return built;
    }

    /// <summary>Outside sizes that a shell can have.</summary>
    internal static bool IsSensible(Length length) => length > Length.Zero && length <= Largest;

    private static ShellNotes NotesOf(ShellStatement s) => new()
    {
        Linings =
            new Linings(NotBelowZero(s.Lining?.Walls?.Value), NotBelowZero(s.Lining?.Ceiling?.Value), NotBelowZero(s.Lining?.Floor?.Value))
            {
                WallsOf = s.Lining?.WallsOf?.Text ?? "",
                CeilingOf = s.Lining?.CeilingOf?.Text ?? "",
                FloorOf = s.Lining?.FloorOf?.Text ?? "",
            },
        GroundBelowFloor = s.GroundBelowFloor?.Value,
        DoorEnd = s.Doors?.Side,
        TrueNorth = s.TrueNorth is { } north ? (double)north.Value : null,
        WallThickness = s.WallThickness is { } wall ? NotBelowZero(wall.Value) : null,
        PostSpacing = s.PostsEvery?.Value,
        Loads = new ShellLoads(
            s.Weight?.Empty?.Value.Base, s.Weight?.Rated?.Value.Base, s.Axles?.Rated?.Value.Base, s.Axles?.FromHitch?.Value,
            NotBelowZero(s.Hitch?.Ahead?.Value))
        {
            HitchRatedKg = s.Hitch?.Rated?.Value.Base,
        },
        Span = s.HeadSpan,
    };

    private static Length NotBelowZero(Length? length) => Length.Max(length ?? Length.Zero, Length.Zero);

    private BuiltShell? Container(ShellStatement statement, ShellNotes notes)
    {
        if (statement.ContainerFeet is not { } feet)
        {
            return null;
        }

        var size = feet.Value is >= 0 and <= 100 ? ContainerSizes.Find((int)feet.Value, statement.HighCube) : null;
        if (size is null || size.Feet != feet.Value)
        {
            string known =
                string.Join(
                    ", ", ContainerSizes.All.Select(
                        s => FormattableString.Invariant($"{s.Feet} ft {(s.HighCube ? "high-cube" : "standard")}")));
            reports.Error(
                "unknown-container",
                FormattableString.Invariant(
                    $"there is no {(statement.HighCube ? "high-cube" : "standard")} container of {feet.Value:0.##} ft"),
                feet.Span,
                $"the sizes are {known}");
            return null;
        }

        return ContainerShell.Build(size, notes with { DoorEnd = EndOf(statement.Doors?.Side, statement.Doors?.Span) });
    }

    private BuiltShell? Trailer(ShellStatement statement, ShellNotes notes)
    {
        if (statement.Size is not { Depth: { } width, Height: { } height } size)
        {
            return null;
        }

        if (!IsSensible(size.Width.Value) || !IsSensible(width.Value) || !IsSensible(height.Value))
        {
            reports.Error("shell-size", "a trailer needs a length, a width and a height above zero and below 1 km", size.Span);
            return null;
        }

        var hitch = EndOf(statement.Hitch?.End.Side, statement.Hitch?.End.Span);
        var doors = EndOf(statement.Doors?.Side, statement.Doors?.Span);
        if (hitch is { } h && hitch == doors)
        {
            reports.Error(
                "doors-at-hitch", $"the doors and the hitch are both at the {h.Word()} end", statement.Hitch!.End.Span,
                $"write `hitch {h.Opposite().Word()}`");
            hitch = null;
        }

        if (notes.Loads.AxlesFromHitch is { } axles
            && (axles <= notes.Loads.HitchAhead || axles >= notes.Loads.HitchAhead + size.Width.Value))
        {
            reports.Error(
                "axles-beyond-trailer",
                $"the axles would not be under the box, which begins {reports.Text(notes.Loads.HitchAhead)} behind the coupling and is "
                    + $"{reports.Text(size.Width.Value)} long",
                statement.Axles!.FromHitch!.Span,
                "measure from the coupling to the middle of the axles, and say how far the coupling lies before the box with `hitch "
                    + "west, 1200 ahead`");
        }

        return TrailerShell.Build(size.Width.Value, width.Value, height.Value, AxlesOf(statement), hitch, notes with { DoorEnd = doors });
    }

    private int AxlesOf(ShellStatement statement)
    {
        if (statement.Axles?.Count is not { } axles)
        {
            return 0;
        }

        if (axles.Value is < 1 or > MostAxles || axles.Value != decimal.Truncate(axles.Value))
        {
            reports.Error("axle-count", $"a trailer has 1 to {MostAxles} axles", axles.Span, "write a whole number, such as `axles 2`");
            return 0;
        }

        return (int)axles.Value;
    }

    // Containers and trailers lie west to east.
    private Side? EndOf(Side? side, SourceSpan? span)
    {
        if (side is { } given && given.RunsEastWest())
        {
            reports.Error(
                "not-an-end", $"a container or trailer lies west to east, so it has no {given.Word()} end", span!.Value,
                "write `west` or `east`");
            return null;
        }

        return side;
    }
}
