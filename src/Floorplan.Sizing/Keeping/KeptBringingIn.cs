using Floorplan.Model;
using Floorplan.Model.Space.Keeping;
using Floorplan.Sizing.CarryingIn;

namespace Floorplan.Sizing.Keeping;

/// <summary>In which order things are brought in, with the plan that it was worked out on.</summary>
internal sealed class KeptBringingIn
{
    private readonly Plan madeOn;
    private readonly BringingIn result;

    private KeptBringingIn(Plan plan)
    {
        madeOn = plan;
        result = BringingIn.Of(plan);
    }

    /// <summary>The earlier one where nothing that it is made from differs, else a new one.</summary>
    public static KeptBringingIn For(Plan plan, KeptBringingIn? before) =>
        before is not null && PlanShape.SameForCarryingIn(before.madeOn, plan) ? before : new KeptBringingIn(plan);

    /// <summary>Told of the things of a plan of the same shape.</summary>
    public BringingIn Of(Plan plan)
    {
        if (ReferenceEquals(plan, madeOn))
        {
            return result;
        }

        var moved = new MovedThings(madeOn, plan);
        return new BringingIn(
            [
                .. result.Steps.Select(s => new BroughtIn(
                    moved.Of(s.Station), [.. s.Ahead.Select(moved.Of)], moved.Of(s.Wall)))],
            [.. result.Stuck.Select(moved.Of)])
        {
            Entries =
            [
                .. result.Entries.Select(e => e with
                {
                    Station = moved.Of(e.Station),
                    Decisive = moved.Of(e.Decisive),
                    LeftOpen = moved.Of(e.LeftOpen),
                })],
        };
    }
}
