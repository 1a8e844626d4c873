using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Stations;

namespace Floorplan.Model.Binding.Reading;

/// <summary>Reads a station, store, bin or sink, with the kinds that it takes its details from folded in.</summary>
internal sealed class StationReader(KindTable kinds)
{
    /// <summary>Null when it has no name.</summary>
    public StationDraft? Read(StationStatement statement)
    {
        if (statement.Name is not { } name)
        {
            return null;
        }

        var chain = kinds.ChainOf(statement);
        return new StationDraft(
            name.Text,
            RoleOf(statement.Keyword.Text),
            statement.Room is { } room ? new NameRef(room.Text, room.Span) : null,
            kinds.Fold(chain),
            statement.Place,
            statement.HeadSpan);
    }

    private static StationRole RoleOf(string keyword) => keyword switch
    {
        "store" => StationRole.Store,
        "bin" => StationRole.Bin,
        "sink" => StationRole.Sink,
        _ => StationRole.Station,
    };
}
