using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class UnknownFinish : Rule
{
    public override string Name => "unknown-finish";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says => "A finish of a room names no material that the trade knows; mostly a slip of the pen.";

    public override string Why
        => "The finish goes to the builder and to the inspector as it is written. What nobody can read is guessed at.";

    public override string Mend => "Write the material: resin, tile, stainless, panel and such. If the word is right, accept the finding.";

    public override IReadOnlyList<Source> Sources { get; } =
        [new("A list of materials kept in this program; common practice, no source", Origin.CommonPractice)];

    public override string Bad => """
        plan "Bream unit"
          units metric
        shell shed 6000 x 3000 x 2500
        room gut "Gutting" dirty from west to east
          finish floor "rezin, coved", walls "sandwich panel", ceiling "panel"
        door d1 gut to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("finish floor", "  finish floor \"resin, coved\", walls \"sandwich panel\", ceiling \"panel\""),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var room in context.Plan.Rooms)
        {
            var unknown = room.Finishes.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => (Surface: f.Key, Word: Unknown(f.Value)))
                .Where(f => f.Word is not null).ToList();
            if (unknown.Count > 0)
            {
                string[] hints = [.. unknown.Select(u => Hint(u.Word!)).OfType<string>().Distinct()];
                yield return CheckContext.Find(this, Severity.Note, [room.Id],
                    $"{Named.Of(room)}: {Named.List(unknown.Select(u => $"the finish of the {u.Surface}, `{u.Word}`,"))} "
                        + $"{(unknown.Count == 1 ? "names" : "name")} no material known here",
                    hints.Length > 0
                        ? string.Join("; ", hints)
                        : "name the material, such as resin, tile, stainless or panel", room.Span, room.Floor.InteriorPoint.Coordinate);
            }
        }
    }

    /// <summary>
    /// The phrase that is in doubt. One without a material may say a colour or a maker, as long as another phrase names the material
    /// and it is near to none.
    /// </summary>
    private static string? Unknown(string finish)
    {
        string[] phrases = FinishWords.Phrases(finish);
        string[] strange = [.. phrases.Where(p => !FinishWords.IsKnown(p))];
        return strange.FirstOrDefault(p => strange.Length == phrases.Length || Hint(p) is not null);
    }

    private static string? Hint(string phrase)
        => FinishWords.Words(phrase).Select(w => NearNames.Hint(w, FinishWords.Materials)).FirstOrDefault(h => h is not null);
}
