using Floorplan.Drawing.Conventions;
using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Sheets.GeneralArrangement;
using Floorplan.Language.Quantities;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>Sheet 8: lists of items, openings, finishes, weights and connections; their numbers are those of sheet 1.</summary>
public sealed class SchedulesSheet : Sheet
{
    public override int Number => 8;

    public override string Name => "schedules";

    public override string Title => "Schedules";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        return head with
        {
            Description =
                $"Schedules: {SheetHead.Count(plan.Stations.Count, "item")}, {SheetHead.Count(plan.Openings.Count, "opening")}, "
                    + $"{SheetHead.Count(plan.Rooms.Count, "room")}.",
            Views = [],
            Tables = [.. Tables(request)],
            Notes =
            [
                "Numbers and marks are those of sheet 1.",
                TapeWords.Note(Tape.For(plan.Units)),
                "Connections: all at once counts every use as written in the plan. What to order is worked out on sheets 4 and 5; licensed "
                    + "trades confirm it.",
                "Empty cells: the plan does not say.",
                .. OpeningKeyTable.Marks(plan) is { } marks ? [marks] : Array.Empty<string>(),
                "Weights: linings, floor and partitions are of what the plan says, or of what the table says. Openings are not taken off "
                    + "and people are not counted. Weigh the unit before it goes on the road.",
                "Lifting index: by the revised NIOSH equation (DHHS 94-110), for a load held close, no twist, a firm grip and few "
                    + "lifts; the real one is as large or larger, and 1 is the goal. Where the plan does not say a load, it is one "
                    + "product, or a bin as heavy as water.",
                "Order of bringing in: things go narrow side first past those that stand already; check the floor for turning long ones. "
                    + "Heavy things are moved by people who do this for a living.",
            ],
            Cautions = [Cautions.LocalCode],
        };
    }

    private static IEnumerable<KeyTable> Tables(SheetRequest request)
    {
        var plan = request.Plan;
        if (plan.Stations.Count > 0)
        {
            yield return ScheduleTables.Items(request.Facts);
            yield return ScheduleTables.Needs(request.Facts);
        }

        yield return OpeningKeyTable.Of(plan);
        yield return ScheduleTables.Finishes(request.Facts);
        if (ScheduleTables.Weights(request.Facts) is { } weights)
        {
            yield return weights;
        }

        if (plan.Stations.Count > 1)
        {
            yield return BringingInTable.Of(request.Facts);
        }

        if (LiftTable.Of(request.Facts) is { } lifts)
        {
            yield return lifts;
        }

        if (ScheduleTables.Connections(request.Facts) is { Rows.Count: > 0 } connections)
        {
            yield return connections;
        }
    }
}
