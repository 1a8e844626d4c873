using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Labels.Drawn;
using Floorplan.Drawing.Scene;

namespace Floorplan.Drawing.Labels;

/// <summary>Places labels one after another, each clear of those before it. Nothing is drawn yet.</summary>
/// <param name="area">Where labels may stand.</param>
/// <param name="keys">How many key numbers other pages of the sheet have given out.</param>
/// <param name="hasKey">False where no key stands beside the view: a number is the last resort then.</param>
internal sealed class LabelRound(PaperBox area, DrawnObstacles obstacles, PaperIndex<LabelArea> areas, int keys, bool hasKey)
{
    /// <summary>Leaders are looked for this often on one sheet; crowded plans of thousands of things then go by key numbers.</summary>
    private const int MostLeaderSearches = 300;

    private readonly List<LabelResult> results = [];
    private readonly List<LabelSpot> found = [];
    private readonly List<LabelRequest> crowded = [];
    private int numbers = keys;
    private int leaderSearches;

    public IReadOnlyList<LabelResult> Results => results;

    /// <summary>What is to be drawn.</summary>
    public IReadOnlyList<LabelSpot> Found => found;

    /// <summary>What stands in another room, or has a leader across another, or no place at all.</summary>
    public IReadOnlyList<LabelRequest> Crowded => crowded;

    public void Place(LabelRequest request)
    {
        string number = FormattableString.Invariant($"k{numbers + 1}");
        var bounds = new LabelBounds(areas, request);
        string? key = hasKey ? number : null;
        var result = Find(request, key, bounds, LabelCare.Usual);
        if (result is null && !request.Optional)
        {
            result = Find(request, key, bounds, LabelCare.Fine);
            if (result is null)
            {
                crowded.Add(request);
                result = Find(request, key, bounds, LabelCare.Loose) ?? Find(request, number, null, LabelCare.Loose);
            }
        }

        numbers += result?.KeyNumber is null ? 0 : 1;
        results.Add(result ?? new LabelResult(request, LabelOutcome.Unplaced, null, null));
    }

    /// <summary>In full, else in short, else by a number.</summary>
    /// <param name="bounds">Null where it may stand in other rooms.</param>
    private LabelResult? Find(LabelRequest request, string? number, LabelBounds? bounds, LabelCare care)
    {
        double smallest = DrawingStandard.Iso.TagHeight;
        if (Try(request, request.Lines, request.MayLead) is { } words)
        {
            return words;
        }

        if (request.Short is { } text && Try(request with { SmallestCapHeight = smallest }, [text], request.MayLead) is { } shorter)
        {
            return shorter;
        }

        // A number that needs as much paper as the words, and a look at the key, is of use only where it may stand elsewhere.
        bool helps = bounds is null || request.KeyTarget is not null || request.Lines.Count > 1 || request.Lines[0].Length > number?.Length;
        return !request.Optional && helps && number is not null && Try(Numbered(request), [number], mayLead: true) is { } keyed
            ? keyed with { Request = request, Outcome = LabelOutcome.Keyed, KeyNumber = number }
            : null;

        LabelResult? Try(LabelRequest asked, IReadOnlyList<string> lines, bool mayLead)
        {
            var search = new LabelSearch(asked, area, obstacles, bounds, care);
            var spot = search.Best(lines, mayLead && leaderSearches < MostLeaderSearches);
            leaderSearches += search.Led ? 1 : 0;
            return spot is null ? null : Take(asked, spot);
        }
    }

    /// <summary>A number needs less paper than the words do: it may stand where they may not.</summary>
    private static LabelRequest Numbered(LabelRequest request) => request with
    {
        Target = request.KeyTarget ?? request.Target,
        KeyTarget = null,
        Positions = request.KeyTarget is null ? request.Positions : [LabelPosition.Inside],
        SmallestCapHeight = Math.Min(request.SmallestCapHeight, DrawingStandard.Iso.TagHeight),
    };

    private LabelResult Take(LabelRequest request, LabelSpot spot)
    {
        obstacles.AddText(spot.Box);
        if (spot.From is { } from)
        {
            obstacles.AddLeader(from, spot.To);
        }

        found.Add(spot);
        return new LabelResult(request, spot.From is null ? LabelOutcome.AtTarget : LabelOutcome.WithLeader, spot.Box, null);
    }
}
