using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Boardwright.Storage.Postgres.Migrations;

/// <summary>The table of entries.</summary>
public partial class Book : Migration
{
    /// <inheritdoc />
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "entries",
            columns: table => new
            {
                number = table.Column<long>(type: "bigint", nullable: false),
                id = table.Column<Guid>(type: "uuid", nullable: false),
                written_at_utc = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                happened_at = table.Column<DateTime>(type: "timestamp without time zone", nullable: false),
                by = table.Column<string>(type: "text", nullable: false),
                kind = table.Column<string>(type: "text", nullable: false),
                fact = table.Column<string>(type: "text", nullable: false),
                corrects = table.Column<long>(type: "bigint", nullable: true),
                reason = table.Column<string>(type: "text", nullable: true),
                as_entered = table.Column<string>(type: "text", nullable: true),
                seal = table.Column<string>(type: "text", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("PK_entries", x => x.number);
            });

        migrationBuilder.CreateIndex(
            name: "IX_entries_id",
            table: "entries",
            column: "id",
            unique: true);

        // The book is append-only in the database too: whatever program opens it, nothing is changed or removed.
        migrationBuilder.Sql("CREATE FUNCTION entries_stay() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN RAISE EXCEPTION 'entries are never changed or removed; write a correction'; END $$;");
        migrationBuilder.Sql("CREATE TRIGGER entries_never_change BEFORE UPDATE OR DELETE OR TRUNCATE ON entries FOR EACH STATEMENT EXECUTE FUNCTION entries_stay();");
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "entries");

        migrationBuilder.Sql("DROP FUNCTION entries_stay();");
    }
}
