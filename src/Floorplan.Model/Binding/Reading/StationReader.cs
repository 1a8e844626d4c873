using Floorplan.Language.Syntax.Statements;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Details;
using Floorplan.Model.Details.Tables;
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
        int quarters = kinds.QuartersOf(chain);
        return new StationDraft(
            name.Text,
            RoleOf(statement.Keyword.Text),
            statement.Room is { } room ? new NameRef(room.Text, room.Span) : null,
            SaidValues.Fold(StationTable.All, chain, quarters),
            statement.Place,
            statement.HeadSpan)
        {
            Label = chain.Select(s => s.Label?.Text).FirstOrDefault(l => l is not null),
            Purpose = string.Join(' ', (chain.FirstOrDefault(s => s.Purpose.Count > 0)?.Purpose ?? []).Select(w => w.Text)),
            Quarters = quarters,
        };
    }

    private static StationRole RoleOf(string keyword) => keyword switch
    {
        "store" => StationRole.Store,
        "bin" => StationRole.Bin,
        "sink" => StationRole.Sink,
        _ => StationRole.Station,
    };
}
