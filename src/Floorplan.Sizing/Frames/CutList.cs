using Floorplan.Language.Quantities;
using Floorplan.Sizing.Working;

namespace Floorplan.Sizing.Frames;

/// <summary>The pieces of all frames, equal ones of one opening together, and what they weigh by section.</summary>
public sealed record CutList(IReadOnlyList<CutListRow> Rows, IReadOnlyList<SectionTotal> Totals)
{
    internal static Source Sums { get; } = new("EN 10219-2 and EN 10056-1: steel of 7850 kg/m³", Origin.FoundInSecondaryCopy);

    /// <summary>Each piece as long as the list prints it: a welder saws to that, and the sums and bars are of what is sawn.</summary>
    public static CutList Of(IReadOnlyList<CutOut> cuts, UnitSystem units)
    {
        var rows = cuts.Where(c => c.Frame is not null)
            .SelectMany(c => c.Frame!.Pieces.Select(p => p with { Length = Tape.ForSteel(units).Round(p.Length) })
                .GroupBy(p => p).Select(g => new CutListRow(c.Opening.Id, g.Key, g.Count())))
            .ToList();
        var totals = rows.GroupBy(r => r.Piece.Section)
            .Select(g => new SectionTotal(
                g.Key,
                g.Sum(r => r.Count),
                new Length(g.Sum(r => r.Piece.Length.Nanometres * r.Count)),
                Weight(g.Key.Name(units), [.. g], units)));
        return new CutList(rows, [.. totals]);
    }

    private static Figure Weight(string section, IReadOnlyList<CutListRow> rows, UnitSystem units)
    {
        double kilograms = rows.Sum(r => r.Piece.Kilograms * r.Count);
        double metres = rows.Sum(r => r.Piece.Length.Metres * r.Count);
        string each = QuantityText.Of(rows[0].Piece.Section.MassPerMetre, Measure.LineLoad, units);
        return new Figure
        {
            Name = $"weight of frames of {section}",
            Of = Figure.WholePlan,
            Value = kilograms,
            Kind = QuantityKind.Mass,
            Text = QuantityText.Of(kilograms, Measure.Mass, units),
            Inputs = [.. rows.Select(
                r => FigureInput.Taken($"{r.Count} {r.Piece.Part} of {r.Opening}", QuantityText.Length(r.Piece.Length, units), Sums))],
            Formula = "length of all pieces x weight of a metre",
            Substituted = $"{WorkingText.Long(metres * 1000, units)} x {each}",
            Source = Sums,
        };
    }
}

/// <param name="Opening">Id of the opening that it frames.</param>
public sealed record CutListRow(string Opening, FramePiece Piece, int Count);

/// <param name="Length">All pieces end to end, over their long points.</param>
public sealed record SectionTotal(SteelSection Section, int Pieces, Length Length, Figure Kilograms);
