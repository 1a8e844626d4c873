using Floorplan.Language.Words;
using Xunit;

namespace Floorplan.Tests.Language.Words;

public class VocabularyTests
{
    [Fact]
    public void Every_statement_of_the_language_is_there()
    {
        string[] words =
        [
            "plan", "shell", "room", "partitions", "door", "hatch", "window", "opening", "chute", "vent", "kind", "kinds", "station",
            "rail", "store", "bin", "sink", "water",
            "drain", "hose", "hole", "panel", "outlet", "switch", "light", "air", "heater", "falls", "flow", "day", "limit", "accept",
            "sheet",
        ];
        Assert.Equal(words.Order(), Vocabulary.Statements.Select(s => s.Word).Order());
    }

    [Theory]
    [InlineData("station", "size", Use.Used)]
    [InlineData("station", "work", Use.Used)]
    [InlineData("station", "cost", Use.Used)]
    [InlineData("room", "light", Use.Used)]
    [InlineData("room", "keep", Use.Used)]
    [InlineData("room", "cooling", Use.Used)]
    [InlineData("day", "changeover", Use.Used)]
    [InlineData("day", "price", Use.Used)]
    public void Words_say_whether_they_are_used(string statement, string detail, Use use) =>
        Assert.Equal(use, Vocabulary.Find(statement)!.Details.Single(d => d.Word == detail).Use);

    [Fact]
    public void An_unknown_word_is_not_found() => Assert.Null(Vocabulary.Find("statoin"));
}
