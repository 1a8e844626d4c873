using System.Text.Json;
using Floorplan.Arrange.Balancing;
using Floorplan.Model;
using Floorplan.Sizing.Simulation.Gains;
using Floorplan.Sizing.Simulation.Line;
using Floorplan.Sizing.Simulation.Plans;

namespace Floorplan.Cli.Output.Json;

/// <summary>What <c>day --output json</c> prints. The schema is in DEVELOPERS.md.</summary>
internal static class DayJson
{
    private const int Schema = 1;

    public static void Write(TextWriter output, string file, Plan plan, PlannedDay day, DayGains gains)
        => JsonDocumentText.Write(output, json =>
    {
        json.WriteNumber("schema", Schema);
        json.WriteString("file", file);
        json.WriteString("unit", day.Planned.Unit);
        json.WriteBoolean("judged", day.FlatOut is not null);
        Each(json, "needs", day.Planned.Needs, need =>
        {
            json.WriteString("of", need.Of);
            json.WriteString("missing", need.Missing);
            json.WriteString("write", need.Write);
        });
        if (day is not { FlatOut: { } fast, Paced: { } paced })
        {
            return;
        }

        json.WriteNumber("targetPerHour", day.Planned.TargetPerHour);
        json.WriteNumber("items", day.Planned.Items);
        Each(json, "products", day.Planned.Products.Zip(day.Paces), product =>
        {
            json.WriteString("unit", product.First.Unit);
            json.WriteNumber("targetPerHour", product.First.PerHour);
            json.WriteNumber("hours", Rounded(Ticks.Hours(product.First.Work)));
            json.WriteNumber("ratePerHour", Rounded(product.Second.PerHour));
            json.WriteNumber("rateHalfBand", Rounded(product.Second.Half));
        });
        json.WriteNumber("ratePerHour", Rounded(day.Rate));
        json.WriteBoolean("keepsUp", day.KeepsUp);
        json.WriteNumber("rateHalfBand", Rounded(day.Pace.Half));
        json.WriteNumber("firstDoneSeconds", Ticks.Seconds(paced.Outs[0]));
        json.WriteNumber("lastDoneSeconds", Ticks.Seconds(paced.Outs[^1]));
        Frame(json, DayFrame.Of(plan, day));
        Each(json, "leastCrew", LeastCrew.Of(day), crew =>
        {
            json.WriteString("crew", crew.Work.Name);
            json.WriteNumber("people", crew.Work.People);
            json.WriteNumber("workSecondsAnItem", Rounded(Ticks.Seconds(crew.Work.Content)));
            json.WriteNumber("taktSeconds", Rounded(Ticks.Seconds(crew.Takt)));
            json.WriteNumber("enough", crew.People);
            json.WriteNumber("atLeast", crew.AtLeast);
        });
        json.WriteString("heldUpBy", gains.Limit);
        json.WriteString("thenBy", gains.NextLimit);
        Each(json, "gains", gains.Single.Concat(gains.Pairs), gain => Gain(json, gain));
        Each(json, "toTarget", gains.ToTarget, gain => Gain(json, gain));
        json.WriteBoolean("targetIsReached", gains.Reaches);
        Run(json, "paced", paced);
        Run(json, "flatOut", fast);
        Each(json, "stores", DayStore.Of(plan, day), store =>
        {
            json.WriteString("id", store.Id);
            json.WriteNumber("items", store.Items);
            Number(json, "holds", store.Holds);
            Number(json, "fullAfterSeconds", store.FullAt is { } at ? Ticks.Seconds(at) : null);
        });
    });

    private static void Frame(Utf8JsonWriter json, DayFrame? frame)
    {
        if (frame is not null)
        {
            json.WriteStartObject("frame");
            json.WriteNumber("startUpSeconds", Ticks.Seconds(frame.StartUp));
            json.WriteNumber("handsEndSeconds", Ticks.Seconds(frame.HandsEnd));
            json.WriteNumber("washDownSeconds", Ticks.Seconds(frame.WashDown));
            json.WriteBoolean("washDownIsSaid", frame.IsWashDownSaid);
            json.WriteNumber("crewSeconds", Ticks.Seconds(frame.CrewTime));
            json.WriteEndObject();
        }
    }

    private static void Run(Utf8JsonWriter json, string name, LineOutcome run)
    {
        json.WriteStartObject(name);
        json.WriteNumber("seconds", Ticks.Seconds(run.End));
        json.WriteNumber("insideOnAverage", Rounded(run.InsideTime / Math.Max(1, run.End)));
        Each(json, "stations", run.Steps, step =>
        {
            json.WriteString("id", step.Name);
            json.WriteNumber("items", step.Items);
            json.WriteNumber("mostWaiting", step.MostWaiting);
            json.WriteNumber("waitingOnAverage", Rounded(step.WaitingTime / Math.Max(1, run.End)));
            json.WriteNumber("workingOnAverage", Rounded(step.GoingTime / Math.Max(1, run.End)));
            json.WriteNumber("blockedOnAverage", Rounded(step.BlockedTime / Math.Max(1, run.End)));
        });
        Each(json, "people", run.People, person =>
        {
            json.WriteString("crew", run.Line.Crews[person.Crew].Name);
            json.WriteNumber("workingSeconds", Ticks.Seconds(person.Working));
            json.WriteNumber("carryingSeconds", Ticks.Seconds(person.Carrying));
            json.WriteNumber("walkingSeconds", Ticks.Seconds(person.Walking));
            json.WriteNumber("emptyingSeconds", Ticks.Seconds(person.Emptying));
            json.WriteNumber("washingSeconds", Ticks.Seconds(person.Washing));
            json.WriteNumber("waitingSeconds", Ticks.Seconds(person.Waiting));
            json.WriteNumber("metres", Rounded(person.Metres));
        });
        Each(json, "bins", run.Bins, bin =>
        {
            json.WriteString("id", bin.Bin.Name);
            json.WriteNumber("kilograms", Rounded(bin.Kilograms));
            json.WriteNumber("holdsKilograms", Rounded(bin.Bin.Kilograms));
            json.WriteNumber("emptied", bin.Emptied);
            Number(json, "fullAfterSeconds", bin.FullAt is { } at ? Ticks.Seconds(at) : null);
        });
        json.WriteEndObject();
    }

    private static void Gain(Utf8JsonWriter json, DayGain gain)
    {
        json.WriteString("text", gain.Text);
        json.WriteNumber("ratePerHour", Rounded(gain.Rate));
    }

    private static void Each<T>(Utf8JsonWriter json, string name, IEnumerable<T> all, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (var one in all)
        {
            json.WriteStartObject();
            write(one);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, Rounded(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static double Rounded(double value) => Math.Round(value, 3);
}
