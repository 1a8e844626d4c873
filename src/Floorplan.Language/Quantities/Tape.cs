namespace Floorplan.Language.Quantities;

/// <summary>
/// How sheets print dimensions: in steps that a tape shows, which are whole millimetres or 1/8 in, and 1/16 in for what is cut or sawn in
/// steel. Only what is printed is rounded; findings and workings keep the finer figures of <see cref="QuantityText"/>.
/// </summary>
/// <remarks>
/// A size is rounded by itself, so that equal things have equal sizes. A stretch between two places of the plan is what lies between
/// their rounded places (<see cref="Between"/>): so chains add up as printed, and a key says what a row says. It is then off by less than
/// a step.
/// </remarks>
public readonly record struct Tape
{
    /// <summary>What geometry in floating point may be off by, in nanometres.</summary>
    private const long Slack = 1;

    private const int Eighths = 8;
    private const int Sixteenths = 16;

    private readonly bool steel;

    private Tape(UnitSystem units, bool steel)
    {
        Units = units;
        this.steel = steel;
    }

    public UnitSystem Units { get; }

    /// <summary>For what is built, bought and set out.</summary>
    public static Tape For(UnitSystem units) => new(units, steel: false);

    /// <summary>For what is cut or sawn in steel.</summary>
    public static Tape ForSteel(UnitSystem units) => new(units, steel: true);

    /// <summary>The smallest difference that is printed.</summary>
    public Length Step => Units == UnitSystem.Metric
        ? new Length(Length.NanometresPerMillimetre)
        : new Length(Length.NanometresPerInch / (steel ? Sixteenths : Eighths));

    /// <summary>In words, for a note: <c>whole millimetres</c> or <c>1/8 in</c>.</summary>
    public string Steps => Units == UnitSystem.Metric ? "whole millimetres" : $"1/{(steel ? Sixteenths : Eighths)} in";

    /// <summary>The step itself, for a note: <c>1 mm</c> or <c>1/8 in</c>.</summary>
    public string OneStep => Units == UnitSystem.Metric ? "1 mm" : Steps;

    /// <summary>Half a step goes up, also where geometry in floating point is off by a nanometre.</summary>
    public Length Round(Length length)
    {
        long step = Step.Nanometres;
        return new Length((long)Math.Floor((length.Nanometres + Slack + (step / 2.0)) / step) * step);
    }

    /// <summary>
    /// To a step of a millimetre or of 1/16 in that is no shorter, for findings: so that what is asked for suffices.
    /// </summary>
    public static Length NoShorter(Length length, UnitSystem units)
    {
        long step = ForSteel(units).Step.Nanometres;
        return new Length((long)Math.Ceiling((length.Nanometres - Slack) / (double)step) * step);
    }

    /// <summary>From one place of the plan to another along an axis, both counted from its inside corner.</summary>
    public Length Between(Length from, Length to) => Round(to) - Round(from);

    /// <summary>On a drawing: <c>2600</c> or <c>8'-6 1/2"</c>.</summary>
    public string Dimension(Length length) => LengthText.Dimension(Round(length), Units);

    /// <summary>In a table; a number never parts from its fraction at the end of a line.</summary>
    public string Cell(Length length) => Dimension(length).Replace(' ', '\u00A0');

    /// <summary>In words: <c>2600 mm</c> or <c>8'-6 1/2"</c>.</summary>
    public string Sentence(Length length) => LengthText.Sentence(Round(length), Units);
}
