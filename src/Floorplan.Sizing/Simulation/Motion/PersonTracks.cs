using Floorplan.Sizing.Simulation.Line;

namespace Floorplan.Sizing.Simulation.Motion;

/// <summary>Where people and loads are: loads take the real ways, empty hands go straight, as the run reckons them.</summary>
internal sealed class PersonTracks(ProductLine line, MoveRoutes routes)
{
    private const double Metre = 1000;

    /// <summary>At each end of a way.</summary>
    private const long Handling = Ticks.Second * 65 / 100;

    /// <summary>Of a short way a fifth at each end, at most.</summary>
    private const int LeastOnTheWay = 5;

    public MotionTrack Of(int crew, IEnumerable<PersonSpan> spans)
    {
        var maker = new TrackMaker();
        foreach (var span in spans.OrderBy(s => s.From))
        {
            maker.StayUntil(span.From);
            Add(maker, span);
        }

        if (maker.Last is null)
        {
            // Somebody who never has anything to do stands where the crew has work.
            int step = line.Steps.Index().Where(s => s.Item.Crew == crew).Select(s => s.Index).FirstOrDefault();
            maker.Add(0, Place(step) ?? (0, 0));
        }

        return maker.Track;
    }

    public MovingLoad Load(LineTrip trip)
    {
        var move = line.Moves[trip.Move];
        var maker = new TrackMaker();
        Carry(maker, Way(trip.Move), move.From, move.To, trip.From, trip.Until);
        return new MovingLoad(trip.Items, trip.Items > 1 || move.Load > 1, trip.From, trip.Until, maker.Track);
    }

    public MovingLoad Empty(PersonSpan span)
    {
        var maker = new TrackMaker();
        Carry(maker, [.. Way(span.What).Reverse()], span.At, span.To, span.From, span.Until);
        return new MovingLoad(0, true, span.From, span.Until, maker.Track);
    }

    /// <summary>Places to stand and the ends of ways differ a little: that is walked while things are picked up and put down.</summary>
    private void Carry(TrackMaker maker, IReadOnlyList<(double X, double Y)> way, int at, int to, long from, long until)
    {
        long handling = Math.Min(Handling, (until - from) / LeastOnTheWay);
        maker.Add(from, Place(at));
        maker.Along(way, from + handling, until - handling);
        maker.Add(until, Place(to));
    }

    private void Add(TrackMaker maker, PersonSpan span)
    {
        switch (span.Does)
        {
            case PersonDoes.Walk:
                maker.Add(span.From, Place(span.At));
                maker.Add(span.Until, Place(span.To));
                break;
            case PersonDoes.Carry:
                Carry(maker, Way(span.What), span.At, span.To, span.From, span.Until);
                break;
            case PersonDoes.BringBack:
                Carry(maker, [.. Way(span.What).Reverse()], span.At, span.To, span.From, span.Until);
                break;
            case PersonDoes.Empty when routes.Bins[span.What] is { } way:
                Carry(maker, [.. way, .. way.Reverse()], span.At, span.To, span.From, span.Until);
                break;
            default:
                maker.Add(span.From, Place(span.At));
                maker.Add(span.Until, Place(span.At));
                break;
        }
    }

    /// <summary>Straight where no way is walked.</summary>
    private IReadOnlyList<(double X, double Y)> Way(int move)
    {
        var from = Place(line.Moves[move].From);
        var to = Place(line.Moves[move].To);
        return routes.Moves[move] ?? [from ?? to ?? (0, 0), to ?? from ?? (0, 0)];
    }

    private (double X, double Y)? Place(int step)
        => step < line.Places.Count && line.Places[step] is var (x, y) ? (x * Metre, y * Metre) : null;
}
