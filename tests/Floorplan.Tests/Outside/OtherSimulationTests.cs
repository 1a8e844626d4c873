using System.Text.Json;
using Floorplan.Sizing.Simulation.Engine;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Tests.Sizing.Simulation;
using Xunit;

namespace Floorplan.Tests.Outside;

/// <summary>Six lines run by SimPy too, a general simulation library that is not ours: every item leaves at the same moment.</summary>
public sealed class OtherSimulationTests
{
    /// <summary>An item takes room at the next step while it still holds its place at this one: blocking after service.</summary>
    private const string Model = """
        import sys, json, random, simpy
        line = json.loads(sys.argv[1])
        env = simpy.Environment()
        draw = random.Random(line["seed"])
        steps, outs = line["steps"], []
        time = (lambda mean: draw.expovariate(1 / mean)) if line["random"] else (lambda mean: mean)
        rooms = [simpy.Resource(env, min(10**9, s["waits"] + s["places"] * s["batch"])) for s in steps]
        places = [simpy.Resource(env, s["places"]) for s in steps]
        hands = [simpy.Resource(env, 1) for s in steps]
        queues = [simpy.Store(env) for s in steps]

        class Job:
            def __init__(self, step, place, items): self.step, self.place, self.left = step, place, items
            def take(self):
                self.left -= 1
                if self.left == 0: places[self.step].release(self.place)

        def machine(s):
            step = steps[s]
            while True:
                waiting = []
                for _ in range(step["batch"]): waiting.append((yield queues[s].get()))
                place = places[s].request()
                yield place
                env.process(job(s, place, waiting))

        def job(s, place, waiting):
            step = steps[s]
            if step["work"]:
                with hands[s].request() as hand:
                    yield hand
                    for _ in waiting: yield env.timeout(time(step["work"]))
            if step["stay"]: yield env.timeout(time(step["stay"]))
            one = Job(s, place, len(waiting))
            for done in waiting: done.succeed(one)

        def item():
            held = None
            for s in range(len(steps)):
                room = rooms[s].request()
                yield room
                if held:
                    held[0].take()
                    rooms[s - 1].release(held[1])
                done = env.event()
                queues[s].put(done)
                held = ((yield done), room)
            held[0].take()
            rooms[-1].release(held[1])
            outs.append(env.now)

        def source():
            for _ in range(line["items"]):
                env.process(item())
                if line["every"]: yield env.timeout(time(line["every"]))
            yield env.timeout(0)

        for s in range(len(steps)): env.process(machine(s))
        env.process(source())
        env.run()
        print(json.dumps(outs))
        """;

    private static readonly Dictionary<string, (int Items, double Every, LineStep[] Steps)> Lines = new()
    {
        ["one server"] = (40, 25, [Step(stay: 30)]),
        ["three in a row without room between"] = (60, 0, [Step(stay: 20), Step(stay: 35), Step(stay: 25)]),
        ["places and room"] =
            (90, 10, [Step(places: 2, stay: 27, waits: 3), Step(places: 3, stay: 40, waits: 2), Step(stay: 11, waits: 4)]),
        ["hands, then a stay"] = (60, 12, [Step(places: 18, work: 9, stay: 120), Step(work: 13, waits: 5)]),
        ["a slow middle"] = (50, 0, [Step(stay: 10, waits: 2), Step(work: 45, waits: 1), Step(stay: 12, waits: 3)]),
        ["batches"] =
            (48, 15, [Step(places: 18, work: 8, stay: 120), Step(batch: 8, stay: 60), Step(batch: 4, stay: 40), Step(work: 16, waits: 8)]),
    };

    public static TheoryData<string> Names => [.. Lines.Keys];

    [SkippableTheory, MemberData(nameof(Names))]
    public void Every_item_leaves_at_the_same_moment(string name)
    {
        double[] theirs = Theirs(name, isRandom: false, 0);
        double[] ours = [.. LineRun.Of(Ours(name)).Outs.Select(Ticks.Seconds)];
        Assert.Equal(Lines[name].Items, ours.Length);
        Assert.All(ours.Zip(theirs), pair => Assert.Equal(pair.Second, pair.First, 6));
    }

    /// <summary>With random times of the same means: the last items leave within the bands of twenty runs each.</summary>
    [SkippableFact]
    public void With_random_times_the_bands_meet()
    {
        const string name = "a slow middle";
        var theirs = Interval.Of20(seed => Theirs(name, isRandom: true, seed)[^1]);
        var line = Ours(name);
        var random = line with
        {
            Steps = [.. line.Steps.Select(s => s with { Work = Random(s.Work), Stay = Random(s.Stay) })],
        };
        var ours = Interval.Of20(seed => Ticks.Seconds(LineRun.Of(random, seed).Outs[^1]));
        Assert.InRange(Math.Abs(ours.Mean - theirs.Mean), 0, ours.Half + theirs.Half);
    }

    private static TaskTime Random(TaskTime time) => time.Mean > 0 ? new(time.Mean, TimeShape.Random, 1) : time;

    private static LineStep Step(int places = 1, int batch = 1, double work = 0, double stay = 0, int waits = 0) => new()
    {
        Name = "step",
        Places = places,
        Batch = batch,
        Least = batch,
        Work = TaskTime.OfSeconds(work),
        Stay = TaskTime.OfSeconds(stay),
        Waits = waits,
    };

    private static ProductLine Ours(string name)
    {
        var (items, every, steps) = Lines[name];
        var line = TestLines.Of(
            new LineSupply(items, TaskTime.OfSeconds(every)), [.. steps.Select((s, i) => s.Work.Mean > 0 ? s with { Crew = i } : s)]);
        return line with { Crews = [.. steps.Select((_, i) => new LineCrew($"c{i}", 1))] };
    }

    private static double[] Theirs(string name, bool isRandom, int seed)
    {
        var (items, every, steps) = Lines[name];
        string python = Readers.PythonWith("simpy");
        string line = JsonSerializer.Serialize(new
        {
            items,
            every,
            random = isRandom,
            seed,
            steps = steps.Select(s => new
            {
                places = s.Places,
                batch = s.Batch,
                work = Ticks.Seconds(s.Work.Mean),
                stay = Ticks.Seconds(s.Stay.Mean),
                waits = s.Waits,
            }),
        });
        return JsonSerializer.Deserialize<double[]>(Readers.Run(python, "-c", Model, line).Out)!;
    }
}
