using Floorplan.Language.Quantities;
using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Values;
using Floorplan.Language.Tokens;

namespace Floorplan.Language.Parsing.Statements;

/// <summary>Water, drains, hoses, panels, outlets, switches, heaters and holes for pipes and cables.</summary>
internal sealed class ServiceParser : StatementParser<ServiceStatement>
{
    private static readonly string[] Words = ["cold", "hot", "floor", "roof", "trench", "sink", "single-phase", "three-phase", "one-way", "two-way", "gfci", "rcd", "sealed", "instant", "tank"];

    private static readonly QuantityKind[] RatingKinds = [QuantityKind.Current, QuantityKind.Voltage, QuantityKind.Power, QuantityKind.Flow, QuantityKind.Volume, QuantityKind.Temperature, QuantityKind.Pressure];

    protected override IReadOnlyDictionary<string, Action<ServiceStatement, Cursor>> Handlers { get; } = new Dictionary<string, Action<ServiceStatement, Cursor>>
    {
        ["height"] = (s, c) => s.Height = c.Length("a height above the floor"),
        ["outlet"] = (s, c) =>
        {
            if ((s.OutletBelow = c.Length("how far the outlet lies below the floor")) is not null && c.Expect("below"))
            {
                c.Expect("floor");
            }
        },
        ["runs"] = RunsTo,
        ["place"] = (s, c) => PlaceParser.List(c, s.Place),
        ["size"] = Size,
        ["circuit"] = Circuit,
        ["vacuum"] = (s, c) => Guard(s, c, "breaker"),
        ["backflow"] = (s, c) => Guard(s, c, "preventer"),
    };

    protected override ServiceStatement Make(WordSyntax keyword) => new() { Keyword = keyword };

    protected override void Head(ServiceStatement s, Cursor c)
    {
        s.Name = c.Name($"the {s.Keyword.Text}'s name");
        s.Label = c.TryText();
        while (!c.Failed && !c.AtPhraseEnd)
        {
            if (c.Try("in"))
            {
                s.Room = c.Name("the name of a room");
                return;
            }

            if (c.Try("on"))
            {
                s.On = c.Name("the name of a water point");
                return;
            }

            if (c.Word($"a word of a {s.Keyword.Text}", Words) is { } word)
            {
                s.Words.Add(word);
            }
        }
    }

    protected override bool Headless(ServiceStatement s, Cursor c)
    {
        if (c.AtSide() && c.IsWord("wall", 1))
        {
            s.Wall = c.Side("a wall");
            c.Skip();
            return true;
        }

        if (c.AtNumber)
        {
            Figure(s, c);
            return true;
        }

        if (PlaceParser.Starts(c))
        {
            PlaceParser.One(c, s.Place);
            return true;
        }

        if (c.Kind == TokenKind.Word && Words.Contains(c.Current.ToLowerInvariant()))
        {
            s.Words.Add(new WordSyntax(c.Current.ToLowerInvariant(), c.Here));
            c.Skip();
            return true;
        }

        return false;
    }

    /// <summary><c>vacuum breaker</c> or <c>backflow preventer</c>, of water points and hoses alone.</summary>
    private static void Guard(ServiceStatement s, Cursor c, string second)
    {
        var first = c.Before;
        if (c.Expect(second))
        {
            string guard = second == "breaker" ? "vacuum breaker" : "backflow preventer";
            if (s.Keyword.Text is "water" or "hose")
            {
                s.Words.Add(new WordSyntax(guard, first.To(c.Before)));
            }
            else
            {
                c.Error("unknown-detail", $"`{guard}` is not a detail of `{s.Keyword.Text}`", first.To(c.Before), "only a water point or a hose has one");
            }
        }
    }

    /// <summary>Of outlets, switches and heaters alone.</summary>
    private static void Circuit(ServiceStatement s, Cursor c)
    {
        if (s.Keyword.Text is "outlet" or "switch" or "heater")
        {
            s.Circuit = c.Words("the number of a circuit");
        }
        else
        {
            c.Error("unknown-detail", $"`circuit` is not a detail of `{s.Keyword.Text}`", c.Before, "an outlet, a switch, a heater or a station is on a circuit");
        }
    }

    /// <summary>Of drains alone: other points have no line that goes on.</summary>
    private static void RunsTo(ServiceStatement s, Cursor c)
    {
        if (s.Keyword.Text != "drain")
        {
            c.Error("unknown-detail", $"`runs` is not a detail of `{s.Keyword.Text}`", c.Before, "only a drain runs to another");
        }
        else
        {
            s.RunsTo = c.Expect("to") ? c.Name("the name of a drain") : null;
        }
    }

    /// <summary>A distance from a side, ratings, or a length that stands alone.</summary>
    private static void Figure(ServiceStatement s, Cursor c)
    {
        bool from = false;
        bool rating = false;
        for (int ahead = 0; c.KindAt(ahead) is { } kind && kind != TokenKind.Comma; ahead++)
        {
            from |= c.IsWord("from", ahead);
            rating |= kind == TokenKind.Word && UnitTable.Find(c.TextAt(ahead)) is { } unit && RatingKinds.Contains(unit.Kind);
        }

        if (from)
        {
            PlaceParser.One(c, s.Place);
        }
        else if (rating)
        {
            while (!c.Failed && !c.AtPhraseEnd)
            {
                if (c.Kind == TokenKind.Word && Words.Contains(c.Current.ToLowerInvariant()))
                {
                    s.Words.Add(new WordSyntax(c.Current.ToLowerInvariant(), c.Here));
                    c.Skip();
                }
                else if (c.Quantity("a rating", RatingKinds) is { } amount)
                {
                    s.Ratings.Add(amount);
                }
            }
        }
        else
        {
            Size(s, c);
        }
    }

    /// <summary>One length; of a hole that is no circle two, <c>400 x 300</c>.</summary>
    private static void Size(ServiceStatement s, Cursor c)
    {
        if (s.Keyword.Text != "hole")
        {
            s.Size = c.Length(s.Keyword.Text == "hose" ? "the length of the hose" : "a size");
        }
        else if (c.Size("the diameter of the hole, or two sides", 1, 2) is { } size)
        {
            (s.Size, s.SizeAcross) = (size.Width, size.Depth);
        }
    }
}
