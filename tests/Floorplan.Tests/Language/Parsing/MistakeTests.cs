using CsCheck;
using Floorplan.Tests.Language.Samples;
using Xunit;

namespace Floorplan.Tests.Language.Parsing;

/// <summary>One mistake each: its place, its sentence and its way out, word for word.</summary>
public class MistakeTests
{
    [Theory]
    [InlineData("statoin a in b", "statoin", "`statoin` does not start a statement", "did you mean `station`?")]
    [InlineData("size 1200 x 600", "size", "`size` does not start a statement", "`size` is a detail of `station`: indent it below one")]
    [InlineData(
        "{ \"station\": 3 }", "{", "`{` does not start a statement",
        "a line starts with a word such as `room`, `door`, `station` or `flow`")]
    [InlineData("station a in b\n  plase against north wall", "plase", "`plase` is not a detail of `station`", "did you mean `place`?")]
    [InlineData("station", "", "expected the station's name, found the end of the line", null)]
    [InlineData(
        "station 2a \"Bench\" in b", "2a", "a name starts with a letter, and `2a` starts with a number", "write `n2a`, for example")]
    [InlineData("station a Bench in b", "Bench", "expected `in` and a room, found `Bench`", "write `station a \"Label\" in ROOM`")]
    [InlineData("station a \"Bench in b", "\"Bench in b", "this text has no closing quote on its line", "put a \" at its end")]
    [InlineData("station a in b,", "", "expected a detail, found the end of the line", "take out the comma that has nothing after it")]
    [InlineData(
        "station a in b; size 3 x 3", ";", "expected a comma or the end of the line, found `;`",
        "details on one line are separated by commas")]
    [InlineData(
        "station a in b\n  size 1200 x 600 place at 1, 2", "place", "expected a comma or the end of the line, found `place`",
        "details on one line are separated by commas")]
    [InlineData("kind bench \"Bench\" in r", "in", "a kind is in no room: the stations that take it are", "end the line here")]
    [InlineData(
        "plan \"a\u202Eb\"", "\"a\u202Eb\"", "this text holds a character that does not show (U+202E)", "type the text again without it")]
    [InlineData("plan Fish unit", "Fish", "expected the plan's title in quotes, found `Fish`", null)]
    [InlineData("plan \"A\"\n  units imperial", "imperial", "`imperial` is not a choice of units", "use `metric` or `feet`")]
    [InlineData("plan \"A\"\n  people", "", "expected who works here: `women` or `men`, found the end of the line", null)]
    [InlineData("plan \"A\"\n  people woman", "woman", "`woman` is not who works here", "did you mean `women`?")]
    [InlineData(
        "plan \"A\"\n  people women to 90 %", "to", "expected a comma or the end of the line, found `to`",
        "details on one line are separated by commas")]
    [InlineData("plan \"A\"\n  people 10 %", "%", "expected `to`, found `%`", null)]
    [InlineData(
        "plan \"A\"\n  people 10 to 90", "90", "how many of a hundred are smaller than the tallest planned for needs a unit after `90`",
        "units that fit: %")]
    [InlineData(
        "plan \"A\"\n  people 90 to 10 %", "90 to 10 %", "people are measured from 1 to 99 of a hundred, the smallest first",
        "write such as `people 10 to 90 %`")]
    [InlineData(
        "plan \"A\"\n  people men 0 to 95 %", "men 0 to 95 %", "people are measured from 1 to 99 of a hundred, the smallest first",
        "write such as `people 10 to 90 %`")]
    [InlineData(
        "plan \"A\"\n  people 5 to 99.5 %", "5 to 99.5 %", "people are measured from 1 to 99 of a hundred, the smallest first",
        "write such as `people 10 to 90 %`")]
    [InlineData(
        "plan \"A\"\n  revision A, 2026-13-25, \"x\"", "2026-13-25", "`2026-13-25` is not a date", "write year, month, day: 2026-11-25")]
    [InlineData("plan \"A\"\n  drawn J. Smith", "J", "expected `by`, found `J`", null)]
    [InlineData("shell contaner 40 ft", "contaner", "`contaner` is not a shell", "did you mean `container`?")]
    [InlineData(
        "shell shed 8000", "", "expected `x` and one more length, found the end of the line",
        "write along, across and height, such as `1200 x 600 x 900`")]
    [InlineData(
        "shell shed corners 0 0, 9000", "", "expected how far north a corner is, found the end of the line",
        "write a length such as `600`, `60 cm`, `2'-6\"` or `9 in`")]
    [InlineData("room r \"R\" dity from west to 3600", "dity", "`dity` is not a hygiene class", "did you mean `dirty`?")]
    [InlineData("room r dirty from west 3600", "3600", "expected `to`, found `3600`", null)]
    [InlineData("door d1 a outside", "outside", "expected `to`, found `outside`", null)]
    [InlineData(
        "door d1 a to outside, 900 x 2050, shwings out", "shwings", "`shwings` is not a detail of `door`", "did you mean `swings`?")]
    [InlineData("door d1 a to outside, closes", "", "expected `itself`, found the end of the line", null)]
    [InlineData("flow prodcut\n  a -> b", "prodcut", "`prodcut` is not a stream", "did you mean `product`?")]
    [InlineData("flow product\n  a -> b by trolly", "trolly", "`trolly` is not a carriage", "did you mean `trolley`?")]
    [InlineData("flow product\n  a -> b by trolley 0 wide", "0", "a width is more than 0", null)]
    [InlineData("flow product\n  a -> b by trolley 600 wide 0 mm long", "0 mm", "a length is more than 0", null)]
    [InlineData(
        "flow product\n  a -> b by hand 12 mm", "12 mm", "expected a weight, found a length (`12 mm`)", "units that fit: g, kg, lb, oz, t")]
    [InlineData(
        "flow product\n  a -> b by hand 12 kg liqiud", "liqiud", "`liqiud` is not what kind of load it is", "did you mean `liquid`?")]
    [InlineData(
        "flow product\n  a", "", "expected `->` and the next stop, found the end of the line", "write `tipping -> gutting  by hand`")]
    [InlineData("flow product\n  a -> b, after lunch", "lunch", "expected `work`, found `lunch`", null)]
    [InlineData("falls r 2 to fd1", "2", "a slope needs a unit after `2`", "units that fit: %")]
    [InlineData("limit hand-sink-too-far 4 m", "", "expected the reason in quotes, found the end of the line", null)]
    [InlineData("accept waste-meets-product at", "", "expected the name of a thing, found the end of the line", null)]
    [InlineData("sheet 1\n  scale 25", "25", "a scale is written 1:25", null)]
    [InlineData("day\n  crew receiving three", "three", "expected how many people, found `three`", null)]
    [InlineData(
        "water w1 cold in r, north wall, 1500 form west", "form", "expected a comma or the end of the line, found `form`",
        "did you mean `from`?")]
    [InlineData(
        "water w1 cold in r, north wall, 1500 from west, circuit 3", "circuit", "`circuit` is not a detail of `water`",
        "take it out: only `station`, `outlet`, `switch` or `heater` may have one")]
    [InlineData(
        "hole h1 in r, north wall, 1500 from west, height 300, 40 x", "", "expected a length after `x`, found the end of the line",
        "write a length such as `600`, `60 cm`, `2'-6\"` or `9 in`")]
    [InlineData("air suply filleting", "suply", "`suply` is not a direction of air", "did you mean `supply`?")]
    public void Statements_and_details(string text, string underlined, string message, string? help)
        => Told(text, underlined, message, help);

    [Theory]
    [InlineData(
        "size 1200", "", "expected `x` and one more length, found the end of the line",
        "write along, across and height, such as `1200 x 600 x 900`")]
    [InlineData(
        "size 1200 x 600 x", "", "expected a length after `x`, found the end of the line",
        "write a length such as `600`, `60 cm`, `2'-6\"` or `9 in`")]
    [InlineData(
        "size 1200 x 600 300", "300", "expected `x` between two lengths, found `300`",
        "write along, across and height, such as `1200 x 600 x 900`")]
    [InlineData(
        "size 1200 x 600 x 900 x", "x", "a size has at most three lengths, found another `x`",
        "write along, across and height, such as `1200 x 600 x 900`")]
    [InlineData("size 1200 x 600 on x 900", "on", "`on` is not a unit of length", "did you mean `in`?")]
    [InlineData(
        "size 5'14\" x 600", "14", "after feet there are fewer than 12 inches, and here are 14",
        "if that is what you measured write `6'-2\"`; otherwise mend one of the two figures")]
    [InlineData(
        "size 1200 x 600 kg", "600 kg", "expected a length, found a weight (`600 kg`)", "lengths are written in mm, cm, m, in or ft")]
    [InlineData("size 1200 mn x 600", "mn", "`mn` is not a unit of length", "did you mean `in`, `m` or `mm`?")]
    [InlineData("size 95O x 600", "O", "`O` is not a unit of length", "the letter `O` stands where a digit is meant: write `950`")]
    [InlineData("size 0 x 600", "0", "a size is more than 0", null)]
    [InlineData("size -5 x 600", "-5", "a length along the station cannot be negative", null)]
    [InlineData("size 1,200 x 600", "1,200", "a number has no comma inside: `1,200`", "write `1200`")]
    [InlineData("size 1001 m x 600", "1001 m", "this length is over 1 km", "check the unit: a bare number is in the plan's `units`")]
    [InlineData("size 1/0 in x 600", "0", "a fraction has a bottom number above 0", null)]
    [InlineData("size 1234567890123456 x 600", "1234567890123456", "a number has at most 15 digits", null)]
    [InlineData("size 999999999999999/0.0000000000001 ft x 600", "999999999999999/0.0000000000001", "a number has at most 15 digits", null)]
    [InlineData(
        "place near north wall", "near", "expected a place, found `near`",
        "a place is one of `against north wall`, `300 from west`, `at 1200, 300`, `east of NAME gap 100`, `centred`, `centred on NAME`, "
            + "`in line with NAME`, `flush south with NAME` or `corner north-west`")]
    [InlineData("place against nort wall", "nort", "expected a wall: north, south, east or west, found `nort`", "did you mean `north`?")]
    [InlineData("place against north", "", "expected `wall`, found the end of the line", null)]
    [InlineData(
        "place 300 of west", "of", "expected `from` and a side, found `of`",
        "write a place such as `300 from west`, or a size such as `900 x 2050`")]
    [InlineData(
        "place at 300", "", "expected a comma and the distance from the south face, found the end of the line", "write `at 1200, 300`")]
    [InlineData("place east gutting", "gutting", "expected `of`, found `gutting`", null)]
    [InlineData(
        "place corner north", "north", "expected a corner: `north-west`, `north-east`, `south-west` or `south-east`, found `north`", null)]
    [InlineData("work 6 each", "6", "how long one takes needs a unit after `6`", "units that fit: h, min, s")]
    [InlineData("work heavi", "heavi", "`heavi` is not a kind of work", "did you mean `heavy`?")]
    [InlineData("work", "", "expected how long one takes, found the end of the line", "write a number and a unit: h, min, s")]
    [InlineData("work 6 kg each", "6 kg", "expected a time, found a weight (`6 kg`)", "units that fit: h, min, s")]
    [InlineData("work 6 sce each", "sce", "`sce` is not a unit of time", "did you mean `sec`?")]
    [InlineData("work -6 s", "-6 s", "how long one takes cannot be negative", null)]
    [InlineData("needs colt 12 L/min", "colt", "`colt` is not a service", "did you mean `cold`?")]
    [InlineData(
        "needs cold 12 hp", "12 hp", "expected a flow of water or a volume, found a power (`12 hp`)",
        "units that fit: L/h, L/min, L/s, gal/h, gal/min, gpm, m3/h; L, ft3, gal, m3, mL")]
    [InlineData(
        "needs hot 12 L/min at 60 kg", "60 kg", "expected a temperature or a pressure, found a weight (`60 kg`)",
        "units that fit: C, F; bar, kPa, psi")]
    [InlineData("workers 99 north", "99", "how many workers is a whole number from 1 to 40", "check the figure")]
    [InlineData(
        "worker sout", "sout", "expected the side that the worker stands on: north, south, east or west, found `sout`",
        "did you mean `south`?")]
    [InlineData("waste", "", "expected an amount of waste, or `to` and a bin, found the end of the line", null)]
    public void Details_of_a_station(string detail, string underlined, string message, string? help)
        => Told("station a in b\n  " + detail, underlined, message, help);

    [Fact]
    public void A_long_name_and_a_long_text_are_refused()
    {
        Told(
            $"station {new string('a', 61)} in b", new string('a', 61), "a name has at most 60 letters, and this one has 61",
            "use a short name and a label in quotes");
        Told(
            $"plan \"{new string('a', 201)}\"", $"\"{new string('a', 201)}\"", "a text has at most 200 characters, and this one has 201",
            "shorten it, or use a `note` of its own");
    }

    [Fact]
    public void Saying_a_detail_twice_shows_both()
    {
        var mistake = Sample.Parse("station a in b\n  size 1 x 2\n  size 3 x 4").Diagnostics.Single();
        Assert.Equal("said-twice", mistake.Code);
        Assert.Equal(3, mistake.Span.Position.Line);
        Assert.Equal(2, mistake.Related!.Single().Span.Position.Line);
    }

    [Fact]
    public void A_tab_between_plain_words_is_a_space() => Assert.Empty(Sample.Parse("station a in b\n  cost 450\tused").Diagnostics);

    [Fact]
    public void A_slip_in_the_first_word_is_read_on_as_what_was_meant()
    {
        var tree = Sample.Parse("statoin a in b\n  size 1200 x 600\n");
        Assert.Equal("statoin", Assert.Single(tree.Diagnostics).Span.Value);
        Assert.Equal("a", Assert.Single(tree.Statements).Name!.Text);
    }

    /// <summary>It passed as "nothing wrong found" and was on no sheet.</summary>
    [Fact]
    public void A_rail_without_height_is_told()
    {
        var told = Assert.Single(Sample.Parse("rail r1 \"Kill rail\" in a\n  path 300 600, 3200 600\n").Diagnostics);
        Assert.Equal(
            ("detail-missing", "rail `r1` does not say its `height`", "add a line such as `height 2210`"),
            (told.Code, told.Message, told.Help));
        Assert.Equal("rail r1 \"Kill rail\" in a", told.Span.Value);
    }

    /// <summary>In this order it was a mistake, in the other it read.</summary>
    [Fact]
    public void A_weight_may_follow_needs_on_one_line()
    {
        var station =
            (Floorplan.Language.Syntax.Statements.StationStatement)Assert.Single(
                Sample.Parse("station a in b\n  needs cold 5 L/min, weight 20 kg\n").Statements);
        Assert.Equal(20, station.Value(Floorplan.Language.Details.StationDetails.Weight)!.Empty!.Value.Number);
        Assert.Empty(Sample.Parse("station a in b\n  needs cold 5 L/min, weight 20 kg\n").Diagnostics);
    }

    [Theory]
    [InlineData("shell container 20 ft standard\n  axles 2", "`axles` is not a detail of a container")]
    [InlineData("kind k \"K\"\n  size 900 x 600\n  place at 0, 0", "`place` is not a detail of `kind`")]
    [InlineData("room r \"R\" dry from west to 3000\n  area 900 x 900", "`from` and `area` are both said in this `room`")]
    [InlineData("station a in b, 1200 x 600\n  size 900 x 600", "`size` is said twice in this `station`")]
    public void What_would_be_dropped_is_told(string text, string message)
        => Assert.Equal(message, Assert.Single(Sample.Parse(text).Diagnostics).Message);

    [Fact]
    public void A_detail_at_the_margin_is_told_and_still_belongs_to_the_statement_above()
    {
        var tree = Sample.Parse("station a in b\nsize 1200 x 600\n  place at 1, 2\n");
        Assert.Equal("`size` is a detail of `station`: indent it below one", Assert.Single(tree.Diagnostics).Help);
        Assert.Equal(["in", "size", "place"], Assert.Single(tree.Statements).Details.Select(d => d.Keyword));
    }

    [Fact]
    public void A_slip_in_the_product_is_warned_of_and_its_plural_is_not()
    {
        var told =
            Sample.Parse(
                "plan \"A\"\n  product birds, 2 kg each\nstation a in b\n  holds 80 brids\n  batch 1 bird\nstore c in b\n  holds 5 "
                    + "shelves").Diagnostics.Single();
        Assert.Equal(
            ("unknown-product", "`brids` is not the plan's product", "did you mean `birds`?"), (told.Code, told.Message, told.Help));
        Assert.Equal(Floorplan.Language.Diagnostics.Severity.Warning, told.Severity);
    }

    [Fact]
    public void A_bad_line_never_hides_the_next()
    {
        var tree =
            Sample.Parse(
                "statoin a in b\n  size 1 x 2\nroom r dity from west to east\nstation b in c\n  size 1\n  plase at 1, 2\n  work 6 kg "
                    + "each, cycle 3 kg\ndoor d1 a outside\n");
        Assert.Equal([1, 3, 5, 6, 7, 7, 8], tree.Diagnostics.Select(d => d.Span.Position.Line));
        Assert.Equal(4, tree.Statements.Count);
    }

    [Fact]
    public void Codes_are_kebab_case()
        => PlanText.All.Sample(
            t => Sample.Parse(t).Diagnostics.All(d => d.Code.Length > 0 && d.Code.All(c => c is '-' or (>= 'a' and <= 'z'))), iter: 300);

    private static void Told(string text, string underlined, string message, string? help)
    {
        var mistake = Assert.Single(Sample.Parse(text).Diagnostics);
        Assert.Equal(message, mistake.Message);
        Assert.Equal(underlined, mistake.Span.Value);
        Assert.Equal(help, mistake.Help);
    }
}
