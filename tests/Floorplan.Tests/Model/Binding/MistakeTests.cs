using Floorplan.Language.Diagnostics;
using Xunit;

namespace Floorplan.Tests.Model.Binding;

/// <summary>Every sentence that a mistake in a plan gives, word for word.</summary>
public class MistakeTests
{
    public static TheoryData<string, string, string?> Things => new()
    {
        {
            Thing("against north wall"), "the place of `thing` from west to east is not said",
            "add `against west wall`, `300 from west`, `east of` another thing, `centred` or `in line with` another thing" },
        {
            Thing("300 from west"), "the place of `thing` from south to north is not said",
            "add `against south wall`, `300 from south`, `north of` another thing, `centred` or `in line with` another thing" },
        {
            Thing("in line with tank"), "the place of `thing` from west to east is not said",
            "add `against west wall`, `300 from west`, `east of` another thing, `centred` or `in line with` another thing" },
        {
            "station thing \"Thing\" in wet\n  size 500 x 500 x 900\n", "the place of `thing` is not said",
            "add such as `against north wall, 900 from west`, `corner south-east` or `at 1200, 300`" },
        {
            Thing("against west wall, 300 from west, centred"),
            "the place of `thing` from west to east is fixed twice, by `against west wall` and by `300 from west`",
            "take one of them out" },
        {
            Thing("corner north-west, centred"),
            "the place of `thing` from west to east is fixed twice, by `corner north-west` and by `centred`", "take one of them out" },
        {
            Thing("east of thing gap 100, against north wall"), "the place of `thing` hangs on itself",
            "give one of them a place of its own, such as `300 from west`" },
        { Thing("east of tonk gap 100, against north wall"), "there is nothing called `tonk` to place `thing` by", "did you mean `tank`?" },
        {
            Thing("east of shelf gap 100, against north wall"), "`thing` is in `wet` but is placed east of `shelf`, which is in `dry`",
            "place it by something in `wet`, or use `in line with shelf`" },
        {
            Thing("corner north-west").Replace("in wet", "in wett", StringComparison.Ordinal), "there is no room called `wett`",
            "did you mean `wet`?" },
        { Thing("corner north-west").Replace("in wet", "in tank", StringComparison.Ordinal), "`tank` is a station, not a room", null },
        {
            Thing("corner north-west").Replace("size 500 x 500 x 900", "work 6 s each", StringComparison.Ordinal),
            "the size of `thing` is not said", "add a line such as `size 1200 x 600 x 900`, or take a kind that has one" },
        { Thing("corner north-west")
            + "  turned 30\n", "`thing` is turned 30 degrees, but things stand square to the walls",
                "write `turned 90`, `turned 180` or `turned 270`" },
        { Thing("corner north-west")
            + "  waste 1 kg each to bim\nbin bin in wet, 300 x 300, corner south-east\n", "there is no bin called `bim`",
                "did you mean `bin`?" },
        { Thing("corner north-west")
            + Thing("corner south-west"), "the name `thing` is given twice, to a station and to a station",
                "give one of them another name" },
        {
            Thing("corner north-west").Replace("station thing", "station outside", StringComparison.Ordinal),
            "`outside` means everything beyond the shell, so nothing else can be called that", "choose another name" },
        { Thing("corner north-west").Replace("\"Thing\"", "\"Thing\" like bench", StringComparison.Ordinal)
            + "kind bnech \"Bench\"\n", "there is no kind called `bench`", "did you mean `bnech`?" },
        {
            "kind a like b\nkind b like a\nstation thing like a in wet\n  size 500 x 500 x 900\n  place corner north-west\n",
            "the kind `a` takes its details from itself", "let one of the kinds stand alone" },
        { "door d1 wet to dri, 100 from south, 900 x 2000\n", "there is no room called `dri`", "did you mean `dry`?" },
        {
            "door d1 wet to dry, 3500 from south, 900 x 2000\n",
            "`d1` reaches 400 mm beyond the north end of its wall, which is 4000 mm long", "move it along the wall or make it narrower" },
        {
            "door d1 wet to dry, 500 from west, 900 x 2000\n",
            "`d1` is in a wall that runs from south to north, so `500 from west` does not place it",
            "write `500 from south` or `500 from north`" },
        {
            "door d1 wet to dry, 900 x 2000\n", "the place of `d1` along its wall is not said",
            "add `500 from south`, `centred` or `centred on` another thing" },
        {
            "door d1 wet to dry, centred, 100 from south, 900 x 2000\n",
            "the place of `d1` along its wall is fixed twice, by `centred` and by `100 from south`", "take one of them out" },
        {
            "door d1 wet to outside, centred, 900 x 2000\n", "`wet` has more than one outside wall",
            "say which: `north wall` or `south wall` or `west wall`" },
        {
            "door d1 wet to outside, east wall, centred, 900 x 2000\n", "`wet` has no outside wall on the east side of `wet`",
            "write `north wall` or `south wall` or `west wall`" },
        {
            "door d1 wet to dry, north wall, centred, 900 x 2000\n", "`wet` and `dry` share no wall on the north side of `wet`",
            "write `east wall`" },
        { "door d1 wet to wet, centred, 900 x 2000\n", "`d1` joins `wet` to itself", "name the room on its other side, or `outside`" },
        { "door d1 outside to outside, centred, 900 x 2000\n", "`d1` joins outside to outside", "name the room on one side of it" },
        {
            "door d1 wet to dry, centred, 900 x 2000, swings out\n", "`d1` cannot swing out: it is between `wet` and `dry`",
            "write `swings wet` or `swings dry`" },
        {
            "door d1 wet to dry, centred, 900 x 2700\n", "`d1` reaches 100 mm above the finished ceiling, which is at 2600 mm",
            "make it lower, or give it a lower sill" },
        { "drain fd1 floor in wet, centred, 100\nfalls wet 2 % to fd2\n", "there is no drain called `fd2`", "did you mean `fd1`?" },
        { "water w1 cold in wet, north wall, centred\nhose hz1 on w2, 7 m\n", "there is no water point called `w2`", "did you mean `w1`?" },
        {
            "flow product\n  outside -> tanc   by hand\n", "there is no station, opening or room called `tanc` to stop at",
            "did you mean `tank`?" },
        { "accept overlap at tanc \"agreed\"\n", "there is nothing called `tanc` in this plan", "did you mean `tank`?" },
        { "day\n  crew wett 2\n", "there is no room or station called `wett`", "did you mean `wet`?" },
        { "kinds from parts/fisch\n", "there is no shelf `parts/fisch` among the built-in parts", "did you mean `parts/fish`?" },
        { "shell shed 5000 x 3000 x 2500\n", "`shell` is given twice", "put all of it into one statement" },
    };

    [Theory]
    [MemberData(nameof(Things))]
    public void A_mistake_is_told_once_with_a_way_out(string lines, string message, string? help)
    {
        var mistake = PlanTexts.Mistake(PlanTexts.TwoRooms + """
            station tank "Tank" in wet
              size 1200 x 1200 x 900
              place at 2200, 1000
            station shelf "Shelf" in dry
              size 400 x 400 x 900
              place corner south-east

            """ + lines);
        Assert.Equal(message, mistake.Message);
        Assert.Equal(help, mistake.Help);
        Assert.Equal(Severity.Error, mistake.Severity);
    }

    public static TheoryData<string, string, string?> Shells => new()
    {
        {
            "", "there is no `shell`, so there is nothing to build in",
            "add a line such as `shell container 20 ft standard` or `shell shed 8000 x 5000 x 2700`" },
        {
            "shell container 30 ft standard", "there is no standard container of 30 ft",
            "the sizes are 10 ft standard, 20 ft standard, 20 ft high-cube, 40 ft standard, 40 ft high-cube, 45 ft high-cube" },
        {
            "shell shed corners 0 0, 5000 0, 4000 3000, 0 3000\n  eaves 2500",
            "the wall after this corner is neither west to east nor south to north",
            "walls meet at right angles: let each corner share its x or its y with the next one, and the last with the first" },
        { "shell shed corners 0 0, 5000 0, 5000 3000, 0 3000", "the height of the eaves is not said", "add a line such as `eaves 2700`" },
        {
            "shell shed 400 x 3000 x 2500", "walls and linings leave no room inside this shell",
            "make the shell larger or the linings thinner" },
    };

    [Theory]
    [MemberData(nameof(Shells))]
    public void A_mistake_in_the_shell_leaves_no_plan(string shell, string message, string? help)
    {
        var bound = PlanTexts.Bind("plan \"P\"\n" + shell + "\n");
        Assert.Null(bound.Plan);
        var mistake = Assert.Single(bound.Diagnostics);
        Assert.Equal((message, help), (mistake.Message, mistake.Help));
    }

    [Fact]
    public void A_circle_is_shown_by_its_names()
    {
        var mistake = PlanTexts.Mistake(PlanTexts.TwoRooms + """
            station a "A" in wet
              size 500 x 500 x 900
              place against north wall, east of c gap 100
            station b "B" in wet
              size 500 x 500 x 900
              place against north wall, east of a gap 100
            station c "C" in wet
              size 500 x 500 x 900
              place against north wall, east of b gap 100
            station d "D" in wet
              size 500 x 500 x 900
              place against south wall, in line with c
            """);
        Assert.Equal("places go round in a circle: `a`, `c`, `b`, and back to `a`", mistake.Message);
        Assert.Equal(2, mistake.Related!.Count);
    }

    [Fact]
    public void What_is_whole_is_bound_beside_mistakes()
    {
        var bound =
            PlanTexts.Bind(PlanTexts.TwoRooms + Thing("corner north-west")
                + "station broken \"Broken\" in wet\n  size 500 x \n  place nowhere at all\n");
        Assert.True(bound.HasErrors);
        Assert.Contains(bound.Plan!.Stations, s => s.Id == "thing");
        Assert.Equal(2, bound.Plan.Rooms.Count);
    }

    private static string Thing(string place) => $"station thing \"Thing\" in wet\n  size 500 x 500 x 900\n  place {place}\n";
}
