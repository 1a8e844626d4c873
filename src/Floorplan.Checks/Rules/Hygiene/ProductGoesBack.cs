using Floorplan.Checks.Findings;
using Floorplan.Checks.Framework;
using Floorplan.Language.Diagnostics;
using Floorplan.Model.Rooms;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Checks.Rules.Hygiene;

internal sealed class ProductGoesBack : Rule
{
    public override string Name => "product-goes-back";

    public override RuleGroup Group => RuleGroup.Hygiene;

    public override string Says
        => "A product leg goes from a cleaner room into a dirtier one. Leaving the building and going to a dry store are fine.";

    public override string Why
        => "What has been cleaned picks up again what it was cleaned of: feathers, slime, gut contents. From then on everything it "
            + "touches is dirty too.";

    public override string Mend
        => "Put the station on the clean side, give the later room its own way on, or class the room for what is truly done there.";

    public override IReadOnlyList<Source> Sources { get; } = [HygieneSources.OneWayFlow, HygieneSources.NoCrossFlow, HygieneSources.Ranks];

    public override string Bad => """
        plan "Carp works"
          units metric
        shell shed 8000 x 3000 x 2500
        room wet "Scaling" dirty from west to 4000
        room dress "Dressing" clean from 4000 to east
        partitions thickness 80
        door d1 wet to outside, south wall, 500 from west, 900 x 2050, swings out, closes itself
        door d2 wet to dress, 300 from south, 900 x 2050, swings dress, closes itself
        drain fd1 floor in wet, 2000 from west, centred, 100
        drain fd2 floor in dress, 2000 from west, centred, 100
        sink s1 hand in wet, 400 x 350, against south wall, 2000 from west
        sink s2 hand in dress, 400 x 350, against south wall, 2500 from west
        station scaler "Scaling table" in wet
          size 1200 x 600 x 900
          place against north wall, 300 from west
          worker south
        station trim "Trimming table" in dress
          size 1200 x 600 x 900
          place against north wall, 500 from west
          worker south
        station weigh "Weighing table" in wet
          size 700 x 600 x 900
          place against north wall, 2400 from west
          worker south
        flow product
          outside -> d1 -> scaler -> d2 -> trim   by hand
          trim -> d2 -> weigh                     by hand
        """;

    public override IReadOnlyList<LineChange> Mended =>
    [
        new("station weigh", "station weigh \"Weighing table\" in dress"),
        new("trim ->", "  trim -> weigh                           by hand"),
    ];

    public override IEnumerable<Finding> Check(CheckContext context)
    {
        foreach (var journey in Journey.Of(context.Space, Stream.Product))
        {
            if (journey is { FromRoom: { } from, ToRoom: { } to } && IsDirtier(to, from))
            {
                yield return CheckContext.Find(this, Severity.Warning, journey.Things,
                    $"product goes back from {Named.Of(from)}, {Class(from)}, to {Named.Of(to)}, {Class(to)}, on its way from "
                        + $"{Named.Of(journey.From)} to {Named.Of(journey.To)}",
                    $"move {Named.Of(journey.To)} to a {Class(from)} room, or do this step before the product leaves {Named.Of(to)}",
                    journey.Legs[^1].Leg.Span, journey.Legs[^1].Route?.Path.EndPoint.Coordinate);
            }
        }
    }

    /// <summary>A dry store ranks lower than a clean room, but what is packed may go there.</summary>
    internal static bool IsDirtier(Room? room, Room than)
        => HygieneRank.Of(room) < HygieneRank.Of(than) && room?.Class != HygieneClass.Dry;

    private static string Class(Room room) => room.Class.ToString().ToLowerInvariant();
}
