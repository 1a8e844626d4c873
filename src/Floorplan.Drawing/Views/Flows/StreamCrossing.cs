using Floorplan.Model.Space;
using NetTopologySuite.Geometries;

namespace Floorplan.Drawing.Views.Flows;

/// <summary>A place where two flows meet, once for each pair of flows and place.</summary>
public sealed record StreamCrossing(string Mark, Coordinate At, IReadOnlyList<Meeting> Meetings)
{
    /// <summary>Meetings nearer than this, in plan mm, are one place: about a stride; own choice.</summary>
    private const double OnePlace = 700;

    public static IReadOnlyList<StreamCrossing> Gather(IReadOnlyList<Meeting> meetings)
    {
        var places = new Dictionary<(long X, long Y), List<Meeting>>();
        foreach (var meeting in meetings)
        {
            var key = ((long)Math.Floor(meeting.At.X / OnePlace), (long)Math.Floor(meeting.At.Y / OnePlace));
            if (!places.TryGetValue(key, out var here))
            {
                places[key] = here = [];
            }

            here.Add(meeting);
        }

        return [.. places.Values.Select((here, i) => new StreamCrossing(FormattableString.Invariant($"X{i + 1}"), here[0].At, here))];
    }
}
