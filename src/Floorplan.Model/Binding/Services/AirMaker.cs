using Floorplan.Language.Syntax.Statements;
using Floorplan.Language.Syntax.Statements.Services;
using Floorplan.Language.Words.Terms;
using Floorplan.Model.Binding.Drafts;
using Floorplan.Model.Services;

namespace Floorplan.Model.Binding.Services;

internal sealed class AirMaker : IServiceMaker
{
    public Type Reads => typeof(AirStatement);

    public IEnumerable<ServiceDraft> Read(Statement statement) =>
        ((AirStatement)statement).Rooms.Select(r => new ServiceDraft(Point(r), new NameRef(r.Room.Text, r.Room.Span), []));

    // Names have no spaces, so these are never taken by another thing.
    private static AirPoint Point(RoomAirSyntax room) => room.Direction == AirDirection.Supply
        ? new AirSupply { Id = $"air supply {room.Room.Text}", Amount = room.Flow?.Value, Span = room.Span }
        : new AirExhaust { Id = $"air exhaust {room.Room.Text}", Amount = room.Flow?.Value, Span = room.Span };
}
