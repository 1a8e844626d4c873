using Floorplan.Language.Parsing;
using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Text;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Details;

/// <summary>How the longer details of a station are read.</summary>
internal static class StationReading
{
    private static readonly string[] NeedWords = ["cold", "hot", "drain", "power", "air", "ice", "steam", "sterilizer"];

    private static readonly string[] ForWords = ["work", "batch", "cycle", "stays", "holds", "waits"];

    private static readonly string[] WorkWords = ["precise", "light", "heavy", "cutting"];

    private static readonly QuantityKind[] WaterKinds = [QuantityKind.Flow, QuantityKind.Volume];
    private static readonly QuantityKind[] PowerKinds = [QuantityKind.Power, QuantityKind.Voltage, QuantityKind.Current];
    private static readonly QuantityKind[] AirKinds = [QuantityKind.AirFlow, QuantityKind.Flow, QuantityKind.Pressure];
    private static readonly QuantityKind[] SolidKinds = [QuantityKind.Mass, QuantityKind.Rate, QuantityKind.Pressure];
    private static readonly QuantityKind[] Goods = [QuantityKind.Count, QuantityKind.Mass, QuantityKind.Volume];

    public static bool IsWord(SourceSpan span, string word) =>
        span.Source.Content.AsSpan(span.Start, span.Length).Equals(word, StringComparison.OrdinalIgnoreCase);

    public static NumberSyntax? Turned(Cursor c)
    {
        var degrees = c.Number("degrees: 90, 180 or 270");
        c.Try("degrees");
        return degrees;
    }

    /// <summary><c>worker south</c> or <c>workers 2 north, 800 apart</c></summary>
    public static WorkersSyntax? Workers(Cursor c)
    {
        var start = c.Before;
        if (IsWord(start, "worker"))
        {
            return c.Side("the side that the worker stands on") is { } stands
                ? new WorkersSyntax(1, stands, null, start.To(c.Before))
                : null;
        }

        if (c.Whole("how many workers", 1, Bounds.MostWorkers) is not { } count
            || c.Side("the side that the workers stand on") is not { } side)
        {
            return null;
        }

        LengthSyntax? apart = null;
        if (c.NextInList(n => n.AtNumber) || c.AtNumber)
        {
            apart = c.Length("a spacing");
            c.Expect("apart");
        }

        return new WorkersSyntax((int)count.Value, side, apart, start.To(c.Before));
    }

    /// <summary><c>work 6 s each</c>, <c>work 6 s each, spread 20 %, heavy</c> or <c>work heavy</c>.</summary>
    public static WorkSyntax? Work(Cursor c)
    {
        if (c.Kind == TokenKind.Word)
        {
            return c.Word("a kind of work", ["height", .. WorkWords]) is { } alone ? new WorkSyntax(null, alone) : null;
        }

        if (c.Quantity("how long one takes", QuantityKind.Time) is not { } each)
        {
            return null;
        }

        c.Try("each");
        QuantitySyntax? spread = null;
        if (c.NextInList(n => n.IsWord("spread")))
        {
            c.Skip();
            spread = ShareOf(c, "how much the time differs from piece to piece");
        }

        return new WorkSyntax(
            each,
            c.NextInList(n => Array.Exists(WorkWords, w => n.IsWord(w))) ? c.Word("a kind of work", WorkWords) : null)
        {
            Spread = spread,
        };
    }

    /// <summary>
    /// <c>for turkeys work 90 s each batch 2 cycle 60 s stays 3 h holds 20 waits 4</c>: without commas, since after one each of these words
    /// is a detail of the station.
    /// </summary>
    public static ForProductSyntax? ForProduct(Cursor c)
    {
        var start = c.Before;
        if (c.Name("a product of the plan") is not { } product)
        {
            return null;
        }

        var said = new ForProductSyntax(product, start);
        do
        {
            if (c.Word("what differs for it", ForWords) is not { } word)
            {
                break;
            }

            said = word.Text switch
            {
                "work" => said with { Work = TimeOf(c) },
                "cycle" => said with { Cycle = TimeOf(c) },
                "stays" => said with { Stays = TimeOf(c) },
                "batch" => said with { Batch = CountOf(c, product) },
                "holds" => said with { Holds = CountOf(c, product) },
                _ => said with { Waits = CountOf(c, product) },
            };
        }
        while (!c.Failed && Array.Exists(ForWords, w => c.IsWord(w)));
        return said with { Span = start.To(c.Before) };
    }

    /// <summary>From 0 to 100 %.</summary>
    /// <param name="what">For the sentence: <c>a share of the pieces</c>.</param>
    public static QuantitySyntax? ShareOf(Cursor c, string what)
    {
        var share = c.Quantity(what, QuantityKind.Ratio);
        if (share is { Value.Base: < 0 or > 1 })
        {
            c.Error("out-of-range", $"{what} is from 0 to 100 %", share.Span, "check the figure");
            return null;
        }

        return share;
    }

    private static QuantitySyntax? TimeOf(Cursor c)
    {
        var time = c.Quantity("how long it is", QuantityKind.Time);
        c.Try("each");
        return time;
    }

    private static NumberSyntax? CountOf(Cursor c, NameSyntax product)
    {
        var count = c.Whole("how many of them", 1, Bounds.MostOfProduct);
        c.Try(product.Text);
        return count;
    }

    /// <summary><c>rework 5 %</c> or <c>rework 5 % at wash</c></summary>
    public static ReworkSyntax? Rework(Cursor c)
    {
        if (ShareOf(c, "a share of the pieces") is not { } share)
        {
            return null;
        }

        return c.Try("at") ? c.Name("the station where they begin again") is { } at ? new ReworkSyntax(share, at) : null : new(share, null);
    }

    /// <summary><c>pause 20 s every 25 fish</c></summary>
    public static PauseSyntax? Pause(Cursor c) =>
        c.Quantity("how long the pause is", QuantityKind.Time) is { } time && c.Expect("every")
        && c.Quantity("after how many it comes", QuantityKind.Count) is { } every
            ? new PauseSyntax(time, every)
            : null;

    /// <summary><c>holds 80 fish</c> or <c>holds 5 shelves x 120 fish</c>, which is 600 fish.</summary>
    public static QuantitySyntax? Holds(Cursor c)
    {
        var first = c.Quantity("how much it holds", Goods);
        if (first is null || !c.Try("x"))
        {
            return first;
        }

        if (c.Quantity("how much each holds", Goods) is not { } each)
        {
            return first;
        }

        decimal product = Math.Min(first.Value.Number, 1_000_000_000) * Math.Min(each.Value.Number, 1_000_000_000);
        return new QuantitySyntax(new Quantity(product, each.Value.Unit), first.Span.To(each.Span));
    }

    public static IReadOnlyList<NeedSyntax> Needs(Cursor c)
    {
        var needs = new List<NeedSyntax>();
        do
        {
            var start = c.Here;
            if (c.Word("a service", NeedWords) is not { } kind)
            {
                continue;
            }

            var amounts = new List<QuantitySyntax>();
            var kinds =
                kind.Text switch { "cold" or "hot" or "drain" => WaterKinds, "power" => PowerKinds, "air" => AirKinds, _ => SolidKinds };
            while (c.AtNumber && c.Quantity("an amount", kinds) is { } amount)
            {
                amounts.Add(amount);
            }

            var phase = kind.Text == "power" && (c.IsWord("single-phase") || c.IsWord("three-phase")) ? c.Word("how many phases") : null;
            var at = c.Try("at") ? c.Quantity("a temperature or pressure", QuantityKind.Temperature, QuantityKind.Pressure) : null;
            bool fill = kind.Text is "cold" or "hot" && c.Try("to") && c.Expect("fill");
            needs.Add(new NeedSyntax(kind, amounts, at, start.To(c.Before)) { Phase = phase, IsToFill = fill });
        }
        while (c.NextInList(n => n.Kind == TokenKind.Word));
        return needs;
    }

    public static ClearSyntax? Clear(Cursor c)
    {
        var start = c.Before;
        return c.Side("the side to keep clear") is { } side && c.Length("how deep to keep clear") is { } depth
            ? new ClearSyntax(side, depth, c.TryText(), start.To(c.Before))
            : null;
    }

    public static WeightSyntax? Weight(Cursor c)
    {
        (QuantitySyntax? empty, QuantitySyntax? full) = (null, null);
        do
        {
            if (c.Quantity("a weight", QuantityKind.Mass) is not { } weight)
            {
                break;
            }

            bool isFull = c.Try("full");
            if (!isFull)
            {
                c.Try("empty");
            }

            if ((isFull ? full : empty) is not null)
            {
                c.Error("said-twice", $"the weight {(isFull ? "full" : "empty")} is said twice", weight.Span, "keep one of them");
            }

            (empty, full) = isFull ? (empty, weight) : (weight, full);
        }
        while (c.NextInList(n => n.AtNumber));
        return empty is null && full is null ? null : new WeightSyntax(empty, full);
    }

    public static WasteSyntax? Waste(Cursor c)
    {
        var start = c.Before;
        var amount = c.AtNumber ? c.Quantity("an amount of waste", QuantityKind.Mass, QuantityKind.Volume, QuantityKind.Ratio) : null;
        c.Try("each");
        var to = c.Try("to") ? c.Name("the name of a bin, chute or drain") : null;
        if (amount is null && to is null)
        {
            c.Wrong("an amount of waste, or `to` and a bin");
            return null;
        }

        return new WasteSyntax(amount, to, start.To(c.Before));
    }
}
