using Floorplan.Model.Openings;
using Floorplan.Model.Space.Free;
using Floorplan.Model.Space.Keeping;

namespace Floorplan.Model.Space.Search;

/// <summary>One floor map for each width and height that is asked about.</summary>
internal sealed class Maps
{
    private readonly Plan plan;
    private readonly KeptSpace? kept;
    private readonly Dictionary<string, Passage> byId = [];
    private readonly Dictionary<(double Width, double Height, bool CargoDoors), FloorMap> maps = [];

    /// <param name="kept">What plans before this one leave; null keeps nothing.</param>
    public Maps(Plan plan, KeptSpace? kept = null)
    {
        this.plan = plan;
        this.kept = kept;
        Obstacles = new Obstacles(plan.Stations);
        Passages = [.. plan.Openings.Select((o, i) => new Passage(o, i))];
        foreach (var passage in Passages)
        {
            byId.TryAdd(passage.Opening.Id, passage);
        }
    }

    public Obstacles Obstacles { get; }

    /// <summary>By number: the place of the opening in the plan.</summary>
    public IReadOnlyList<Passage> Passages { get; }

    public Passage? Of(Opening opening) => byId.GetValueOrDefault(opening.Id);

    /// <summary>The shell's cargo doors count as wall unless a caller lets them be used: they stay shut while the unit works.</summary>
    public FloorMap For(Mover mover, Func<Opening, bool>? mayPass = null)
    {
        bool cargoDoors = mayPass is not null && Passages.Any(p => p.Opening.Kind == OpeningKind.CargoDoor && mayPass(p.Opening));
        var key = (mover.WidthMm, mover.HeightMm, cargoDoors);
        return maps.TryGetValue(key, out var map) ? map : maps[key] = new FloorMap(plan, Obstacles, Passages, mover, cargoDoors, kept);
    }
}
