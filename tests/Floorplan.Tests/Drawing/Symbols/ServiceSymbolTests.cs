using Floorplan.Drawing.Symbols.Services;
using Floorplan.Model.Services;
using Xunit;

namespace Floorplan.Tests.Drawing.Symbols;

/// <summary>Every service point can be shown.</summary>
public class ServiceSymbolTests
{
    public static TheoryData<Type> Points => [.. Types];

    /// <summary>Services of whole rooms have no point to mark.</summary>
    private static IEnumerable<Type> Types =>
        typeof(ServicePoint).Assembly.GetTypes()
            .Where(t => t.IsSubclassOf(typeof(ServicePoint)) && !t.IsAbstract && !t.IsSubclassOf(typeof(RoomService)));

    [Theory]
    [MemberData(nameof(Points))]
    public void Has_a_symbol_with_a_name_and_a_layer(Type type)
    {
        var point = Made(type);
        Assert.NotNull(ServiceSymbols.Of(point));
        Assert.NotEmpty(ServiceSymbols.NameOf(point));
        Assert.NotEmpty(ServiceSymbols.LayerOf(point));
    }

    [Fact]
    public void Every_symbol_is_used() => Assert.Equal(
        typeof(ServiceSymbols).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(ServiceSymbol)) && !t.IsAbstract).Select(t => t.Name)
            .Order(StringComparer.Ordinal),
        Types.Select(t => ServiceSymbols.Of(Made(t))!.GetType().Name).Order(StringComparer.Ordinal));

    private static ServicePoint Made(Type type) => (ServicePoint)Activator.CreateInstance(type)!;
}
