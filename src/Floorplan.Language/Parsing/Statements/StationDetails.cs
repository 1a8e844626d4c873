using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>The longer details of a station.</summary>
internal static class StationDetails
{
    private const int MostWorkers = 40;

    private static readonly string[] NeedWords = ["cold", "hot", "drain", "power", "air", "ice", "steam", "sterilizer"];

    private static readonly string[] WorkWords = ["precise", "light", "heavy", "cutting"];

    private static readonly QuantityKind[] WaterKinds = [QuantityKind.Flow, QuantityKind.Volume];
    private static readonly QuantityKind[] PowerKinds = [QuantityKind.Power, QuantityKind.Voltage, QuantityKind.Current];
    private static readonly QuantityKind[] AirKinds = [QuantityKind.AirFlow, QuantityKind.Flow, QuantityKind.Pressure];
    private static readonly QuantityKind[] SolidKinds = [QuantityKind.Mass, QuantityKind.Rate, QuantityKind.Pressure];

    public static void Worker(StationStatement s, Cursor c)
    {
        var start = c.Before;
        if (c.Side("the side that the worker stands on") is { } side)
        {
            s.Workers.Add(new WorkersSyntax(1, side, null, start.To(c.Before)));
        }
    }

    public static void Workers(StationStatement s, Cursor c)
    {
        var start = c.Before;
        if (c.Number("how many workers") is not { } count || c.Side("the side that the workers stand on") is not { } side)
        {
            return;
        }

        if (count.Value < 1 || count.Value > MostWorkers || count.Value != decimal.Truncate(count.Value))
        {
            c.Error("count-out-of-range", $"a station has 1 to {MostWorkers} workers", count.Span);
            return;
        }

        LengthSyntax? apart = null;
        if (c.NextInList(n => n.AtNumber) || c.AtNumber)
        {
            apart = c.Length("a spacing");
            c.Expect("apart");
        }

        s.Workers.Add(new WorkersSyntax((int)count.Value, side, apart, start.To(c.Before)));
    }

    /// <summary><c>work 6 s each</c>, <c>work 6 s each, heavy</c>, <c>work heavy</c> or <c>work height 950</c>.</summary>
    public static void Work(StationStatement s, Cursor c)
    {
        if (c.Try("height"))
        {
            s.WorkHeight = c.Length("the height that hands work at");
            return;
        }

        if (c.Kind == Tokens.TokenKind.Word)
        {
            s.WorkKind = c.Word("a kind of work", ["height", .. WorkWords]);
            return;
        }

        s.WorkEach = c.Quantity("how long one takes", QuantityKind.Time);
        c.Try("each");
        if (s.WorkEach is not null && c.NextInList(n => Array.Exists(WorkWords, w => n.IsWord(w))))
        {
            s.WorkKind = c.Word("a kind of work", WorkWords);
        }
    }

    /// <summary><c>holds 80 fish</c> or <c>holds 5 shelves x 120 fish</c>, which is 600 fish.</summary>
    public static void Holds(StationStatement s, Cursor c)
    {
        var first = c.Quantity("how much it holds", QuantityKind.Count, QuantityKind.Mass, QuantityKind.Volume);
        s.Holds = first;
        if (first is null || !c.Try("x"))
        {
            return;
        }

        if (c.Quantity("how much each holds", QuantityKind.Count, QuantityKind.Mass, QuantityKind.Volume) is { } each)
        {
            decimal product = Math.Min(first.Value.Number, 1_000_000_000) * Math.Min(each.Value.Number, 1_000_000_000);
            s.Holds = new QuantitySyntax(new Quantity(product, each.Value.Unit), first.Span.To(each.Span));
        }
    }

    public static void Needs(StationStatement s, Cursor c)
    {
        do
        {
            var start = c.Here;
            if (c.Word("a service", NeedWords) is not { } kind)
            {
                continue;
            }

            var amounts = new List<QuantitySyntax>();
            var kinds = kind.Text switch { "cold" or "hot" or "drain" => WaterKinds, "power" => PowerKinds, "air" => AirKinds, _ => SolidKinds };
            while (c.AtNumber && c.Quantity("an amount", kinds) is { } amount)
            {
                amounts.Add(amount);
            }

            _ = c.Try("single-phase") || c.Try("three-phase");

            var at = c.Try("at") ? c.Quantity("a temperature or pressure", QuantityKind.Temperature, QuantityKind.Pressure) : null;
            s.Needs.Add(new NeedSyntax(kind, amounts, at, start.To(c.Before)));
        }
        while (c.NextInList(n => n.Kind == Tokens.TokenKind.Word && !n.IsWord("size") && !n.IsWord("place") && !n.IsWord("clear") && !n.IsWord("worker") && !n.IsWord("waste") && !n.IsWord("inlet") && !n.IsWord("circuit") && !(n.IsWord("air") && n.IsWord("gap", 1))));
    }

    public static void Clear(StationStatement s, Cursor c)
    {
        var start = c.Before;
        if (c.Side("the side to keep clear") is { } side && c.Length("how deep to keep clear") is { } depth)
        {
            s.Clears.Add(new ClearSyntax(side, depth, c.TryText(), start.To(c.Before)));
        }
    }

    public static void Weight(StationStatement s, Cursor c)
    {
        do
        {
            if (c.Quantity("a weight", QuantityKind.Mass) is not { } weight)
            {
                return;
            }

            if (c.Try("full"))
            {
                s.WeightFull = weight;
            }
            else
            {
                c.Try("empty");
                s.WeightEmpty = weight;
            }
        }
        while (c.NextInList(n => n.AtNumber));
    }

    public static void Waste(StationStatement s, Cursor c)
    {
        var start = c.Before;
        var amount = c.AtNumber ? c.Quantity("an amount of waste", QuantityKind.Mass, QuantityKind.Volume, QuantityKind.Ratio) : null;
        c.Try("each");
        var to = c.Try("to") ? c.Name("the name of a bin, chute or drain") : null;
        if (amount is null && to is null)
        {
            c.Wrong("an amount of waste, or `to` and a bin");
            return;
        }

        s.Wastes.Add(new WasteSyntax(amount, to, start.To(c.Before)));
    }

    /// <summary><c>hung, underside 1900</c> or <c>hung underside 1900</c>.</summary>
    public static void Hung(StationStatement s, Cursor c)
    {
        s.Hung = true;
        if (c.Try("underside"))
        {
            s.Underside = c.Length("the height of the underside");
        }
    }
}
