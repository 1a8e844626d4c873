using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Openings;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads a door, hatch, window, opening, chute or vent. Null when a part that it cannot be without is missing.</summary>
internal sealed class OpeningReader(Reports reports)
{
    /// <summary>More than this is a slip; own bound.</summary>
    private const int MostSteps = 40;

    /// <summary>Larger sections are no frame of a hole in sheet steel; own bound.</summary>
    private static readonly Length MostSection = Length.FromMillimetres(200);

    public OpeningDraft? Read(OpeningStatement statement)
    {
        if (statement.Name is not { } name || statement.First is not { } first || statement.Second is not { } second)
        {
            return null;
        }

        var kind = KindOf(statement.Keyword.Text);
        if (statement.Size is not { Height: { } height } && statement.Size is not { Depth: { } _ })
        {
            if (statement.Size is null)
            {
                reports.Error(
                    "size-missing", $"the size of `{name.Text}` is not said", statement.HeadSpan,
                    $"add its clear width and height, such as `{reports.Example("900 x 2050", "36 x 80")}`");
            }

            return null;
        }

        // An opening is told as width x height, which reads like the first two of three sizes.
        var size = statement.Size!;
        var tall = (size.Depth ?? size.Height)!.Value;
        if (size.Width.Value <= Length.Zero || tall <= Length.Zero)
        {
            reports.Error("size-not-positive", $"`{name.Text}` has a side of no length", size.Span, "give it a size above zero");
            return null;
        }

        return new OpeningDraft(name.Text, kind, Ref(first), Ref(second), statement.HeadSpan)
        {
            Label = statement.Label?.Text ?? "",
            Wall = statement.Wall?.Side,
            WallSpan = statement.Wall?.Span ?? statement.HeadSpan,
            Place = statement.Place,
            Width = size.Width.Value,
            Height = tall,
            Sill = statement.Sill?.Value,
            Swing = SwingOf(statement.Leaf),
            SwingsTo = statement.SwingsTo is { } to ? Ref(to) : null,
            Hinge = statement.Hinge?.Side,
            ClosesItself = statement.ClosesItself,
            OpensFromInside = statement.OpensFromInside,
            Steps = StepsOf(statement),
            Ramp = statement.Ramp,
            Guard = statement.Guard,
            Frame = FrameOf(statement),
            FrameNote = statement.Frame?.Note?.Text ?? "",
            Radius = RadiusOf(statement, Length.Min(size.Width.Value, tall)),
        };
    }

    /// <summary>Two sides and a wall that leaves a hollow, or a leg, between them.</summary>
    private FrameWish? FrameOf(OpeningStatement statement)
    {
        if (statement.Frame?.Form is not { } form || form.Text == "none")
        {
            return statement.Frame?.Form is null ? null : FrameWish.None;
        }

        if (statement.Frame.Size is not { Depth: { } depth, Height: { } thickness } size)
        {
            return null;
        }

        var least = Length.Min(size.Width.Value, depth.Value);
        if (thickness.Value * 2 >= least || Length.Max(size.Width.Value, depth.Value) > MostSection)
        {
            reports.Error(
                "frame-section", "no such section can be bought", size.Span,
                $"write two sides up to {reports.Text(MostSection)} and the thickness of the steel, such as "
                    + $"`{reports.Example("frame tube 50 x 50 x 3", "frame tube 2 x 2 x 1/8")}`");
            return null;
        }

        return new FrameWish(form.Text == "tube" ? FrameForm.Tube : FrameForm.Angle, size.Width.Value, depth.Value, thickness.Value);
    }

    private Length? RadiusOf(OpeningStatement statement, Length smallest)
    {
        if (statement.Radius is { } radius && (radius.Value < Length.Zero || radius.Value * 2 > smallest))
        {
            reports.Error(
                "radius-too-large", $"corners of {reports.Text(radius.Value)} do not fit the hole", radius.Span,
                $"write at most {reports.Text(smallest / 2)}, half of its smaller side");
            return null;
        }

        return statement.Radius?.Value;
    }

    private int? StepsOf(OpeningStatement statement)
    {
        if (statement.Steps is not { } steps)
        {
            return null;
        }

        if (steps.Value is < 1 or > MostSteps || steps.Value != decimal.Truncate(steps.Value))
        {
            reports.Error(
                "step-count", $"a flight has 1 to {MostSteps} steps", steps.Span,
                "write how many rises lead from the ground to the floor, such as `steps 3`");
            return null;
        }

        return (int)steps.Value;
    }

    private static NameRef Ref(NameSyntax name) => new(name.Text, name.Span);

    private static OpeningKind KindOf(string keyword) => keyword switch
    {
        "door" => OpeningKind.Door,
        "hatch" => OpeningKind.Hatch,
        "window" => OpeningKind.Window,
        "chute" => OpeningKind.Chute,
        "vent" => OpeningKind.Vent,
        _ => OpeningKind.Opening,
    };

    private static SwingKind? SwingOf(WordSyntax? leaf) => leaf?.Text switch
    {
        "swings" => SwingKind.Hinged,
        "double" => SwingKind.Double,
        "slides" => SwingKind.Sliding,
        "strip" => SwingKind.Strip,
        "rolls" => SwingKind.RollUp,
        _ => null,
    };
}
