using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Flows;
using Stream = Floorplan.Model.Flows.Stream;

namespace Floorplan.Model.Binding.Flows;

/// <summary>Cuts the chains of a flow into legs between stops.</summary>
internal sealed class FlowMaker(StopFinder stops)
{
    public IReadOnlyList<Flow> Make(IReadOnlyList<FlowDraft> flows) => [.. flows.Select(Make)];

    private Flow Make(FlowDraft flow)
    {
        var legs = new List<Leg>();
        for (int i = 0; i < flow.Chains.Count; i++)
        {
            var chain = flow.Chains[i];
            var carriage = flow.Stream == Stream.People
                ? new Carriage(CarriageKind.Walk, null)
                : chain.Carriage ?? new Carriage(CarriageKind.Hand, null);
            Stop? from = null;
            foreach (var stop in chain.Stops.Select(stops.Find).OfType<Stop>())
            {
                if (from is not null)
                {
                    legs.Add(new Leg(from, stop, carriage, chain.Period, i, chain.Span));
                }

                from = stop;
            }
        }

        return new Flow(flow.Stream, flow.Label, legs, flow.Span) { Product = flow.Product };
    }
}
