using Floorplan.Drawing.Frames;
using Floorplan.Drawing.Sheets.GeneralArrangement;
using Floorplan.Drawing.Views;
using Floorplan.Drawing.Views.Openings;
using Floorplan.Drawing.Views.Rooms;
using Floorplan.Drawing.Views.Stations;

namespace Floorplan.Drawing.Sheets.Schedules;

/// <summary>Sheet 8: lists of items, openings, finishes, weights and connections, beside a key plan with their numbers.</summary>
public sealed class SchedulesSheet : Sheet
{
    public override int Number => 8;

    public override string Name => "schedules";

    public override string Title => "Schedules";

    public override SheetContent Content(SheetRequest request, SheetContent head)
    {
        var plan = request.Plan;
        var view = new PlanView(
            "Key plan",
            plan,
            [
                new StationLayer(plan, StationLook.NumberOnly), new WallLayer(plan), new OpeningLayer(plan), new EndMarkLayer(plan),
                new RoomNameLayer(request.Facts)]);
        return head with
        {
            Description =
                $"Schedules: {SheetHead.Count(plan.Stations.Count, "item")}, {SheetHead.Count(plan.Openings.Count, "opening")}, "
                    + $"{SheetHead.Count(plan.Rooms.Count, "room")}.",
            Views = [view],
            Tables = [.. Tables(request)],
            Notes =
            [
                "Connections: every use open or running at once, as written in the plan. What is used together, and the size of pipes "
                    + "and cables, is worked out by the plumber and the electrician.",
                "Empty cells: the plan does not say.",
                "Weights: linings, floor and partitions as the plan says what they are, or as the table says they are taken; openings "
                    + "are not taken off, people not counted. Check against the plate by weighing.",
                "Lifting index: at least so much, by the revised NIOSH equation (DHHS 94-110) with the load close, no twist, a firm grip "
                    + "and lifts now and then; 1 is its design goal. A load that the plan does not say is that of the lightest product, "
                    + "or of a bin as heavy as water.",
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
