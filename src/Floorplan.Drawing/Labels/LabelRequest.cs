using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Scene;
using Floorplan.Sizing.Working;

namespace Floorplan.Drawing.Labels;

/// <summary>A text that wants a place near something. Sizes in paper millimetres.</summary>
public sealed record LabelRequest
{
    /// <summary>Names it in results; must be unique on the sheet.</summary>
    public required string Id { get; init; }

    /// <summary>One or more lines, already cleaned; the placer shortens none of them.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>
    /// What it says at the size of tags where there is no room for all of <see cref="Lines"/>, because a table says the rest; null where
    /// there is no shorter text.
    /// </summary>
    public string? Short { get; init; }

    /// <summary>What is labelled: a box, or a point as an empty box.</summary>
    public required PaperBox Target { get; init; }

    /// <summary>Where it may stand as well, tried in this order when it is not clear at its target: other stretches of a pipe.</summary>
    public IReadOnlyList<PaperBox> OtherTargets { get; init; } = [];

    /// <summary>Where it may stand, best first.</summary>
    public IReadOnlyList<LabelPosition> Positions { get; init; } = [LabelPosition.Inside];

    /// <summary>Higher is placed first.</summary>
    public int Priority { get; init; }

    public double CapHeight { get; init; } = 2.5;

    /// <summary>May be drawn this small when it does not fit.</summary>
    public double SmallestCapHeight { get; init; } = 2.5;

    public bool Bold { get; init; }

    /// <summary>May be turned to read from the right.</summary>
    public bool MayTurn { get; init; }

    /// <summary>May stand further away, joined by a thin line.</summary>
    public bool MayLead { get; init; } = true;

    /// <summary>How far it may be led away, in mm; own choice.</summary>
    public double LongestLeader { get; init; } = 60;

    /// <summary>Left out without a key number when it finds no place, because another part of the sheet says it too.</summary>
    public bool Optional { get; init; }

    /// <summary>Of an optional label: through how many thin lines it may be drawn before it is left out.</summary>
    public int MostCuts { get; init; } = 3;

    /// <summary>
    /// Of an optional label: what it belongs to, for the sheet's list of what is not shown at its place; null when the same words stand
    /// elsewhere on the sheet, as letters along a pipe do.
    /// </summary>
    public string? ListedUnder { get; init; }

    /// <summary>Where a leader points to; the middle of the target when null.</summary>
    public PaperPoint? LeadTo { get; init; }

    /// <summary>Must stay within this box; null for anywhere on the view.</summary>
    public PaperBox? Within { get; init; }

    /// <summary>Where it may not be led to, such as the floor of other rooms; null for none.</summary>
    public PaperBox? NotOver { get; init; }

    /// <summary>Does not stand on the floor that other things take: a number in a thing is read as the thing's own.</summary>
    public bool OffOthers { get; init; }

    public TagShape Tag { get; init; } = TagShape.None;

    /// <summary>A longer text for the key table when only a number fits; null when <see cref="Lines"/> says all.</summary>
    public string? KeyText { get; init; }

    /// <summary>
    /// Where the number may stand, such as the floor of a room whose name is too long for it; null for the target. Words that have such
    /// a place are not led to where a line strikes through them: the number reads better.
    /// </summary>
    public PaperBox? KeyTarget { get; init; }

    /// <summary>A mark that the view shows anyway, for the key table when not even a number fits; null where there is none.</summary>
    public string? KeyMark { get; init; }

    /// <summary>The worked-out values that its lines print.</summary>
    public IReadOnlyList<Figure> Figures { get; init; } = [];

    public string Layer { get; init; } = Layers.Text;

    public string? Group { get; init; }

    public string Colour { get; init; } = Palette.Black;
}

/// <summary>Where a label stands to its target.</summary>
public enum LabelPosition
{
    Inside,
    InsideTopLeft,
    InsideTopRight,
    InsideBottomLeft,
    InsideBottomRight,
    Right,
    Left,
    Above,
    Below,
    AboveRight,
    AboveLeft,
    BelowRight,
    BelowLeft,
}

/// <summary>An outline drawn round the text, one shape for each class of thing.</summary>
public enum TagShape
{
    None,
    Box,
    Circle,
    Hexagon,
    Diamond,
    Capsule,
    Octagon,

    /// <summary>A box with a gable.</summary>
    Gable,
}
