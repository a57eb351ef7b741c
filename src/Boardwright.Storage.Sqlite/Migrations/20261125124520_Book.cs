using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Boardwright.Storage.Sqlite.Migrations;

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
                number = table.Column<long>(type: "INTEGER", nullable: false),
                id = table.Column<Guid>(type: "TEXT", nullable: false),
                written_at_utc = table.Column<DateTime>(type: "TEXT", nullable: false),
                happened_at = table.Column<DateTime>(type: "TEXT", nullable: false),
                by = table.Column<string>(type: "TEXT", nullable: false),
                kind = table.Column<string>(type: "TEXT", nullable: false),
                fact = table.Column<string>(type: "TEXT", nullable: false),
                corrects = table.Column<long>(type: "INTEGER", nullable: true),
                reason = table.Column<string>(type: "TEXT", nullable: true),
                as_entered = table.Column<string>(type: "TEXT", nullable: true),
                seal = table.Column<string>(type: "TEXT", nullable: false)
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
        migrationBuilder.Sql("CREATE TRIGGER entries_never_change BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never changed; write a correction'); END;");
        migrationBuilder.Sql("CREATE TRIGGER entries_never_go BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'entries are never removed; write a withdrawal'); END;");
    }

    /// <inheritdoc />
    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "entries");
    }
}
