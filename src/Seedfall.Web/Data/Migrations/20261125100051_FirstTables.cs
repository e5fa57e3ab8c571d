using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seedfall.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class FirstTables : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Weather",
                columns: table => new
                {
                    Id = table.Column<int>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    FirstDay = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    LastDay = table.Column<DateOnly>(type: "TEXT", nullable: false),
                    DayCount = table.Column<int>(type: "INTEGER", nullable: false),
                    LatitudeDeg = table.Column<double>(type: "REAL", nullable: true),
                    LongitudeDeg = table.Column<double>(type: "REAL", nullable: true),
                    Invented = table.Column<bool>(type: "INTEGER", nullable: false),
                    Report = table.Column<string>(type: "TEXT", nullable: false),
                    History = table.Column<byte[]>(type: "BLOB", nullable: false),
                    Added = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Weather", x => x.Id);
                });

            migrationBuilder.CreateTable(
                name: "Lawns",
                columns: table => new
                {
                    Id = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    Name = table.Column<string>(type: "TEXT", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Invented = table.Column<bool>(type: "INTEGER", nullable: false),
                    WeatherId = table.Column<int>(type: "INTEGER", nullable: true),
                    Added = table.Column<long>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Lawns", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Lawns_Weather_WeatherId",
                        column: x => x.WeatherId,
                        principalTable: "Weather",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Seasons",
                columns: table => new
                {
                    LawnId = table.Column<string>(type: "TEXT", nullable: false),
                    Year = table.Column<int>(type: "INTEGER", nullable: false),
                    SeedDown = table.Column<DateOnly>(type: "TEXT", nullable: true),
                    SlitSeed = table.Column<bool>(type: "INTEGER", nullable: false),
                    OverseedShare = table.Column<double>(type: "REAL", nullable: true),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Changed = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Seasons", x => new { x.LawnId, x.Year });
                    table.ForeignKey(
                        name: "FK_Seasons_Lawns_LawnId",
                        column: x => x.LawnId,
                        principalTable: "Lawns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Lawns_WeatherId",
                table: "Lawns",
                column: "WeatherId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Seasons");

            migrationBuilder.DropTable(
                name: "Lawns");

            migrationBuilder.DropTable(
                name: "Weather");
        }
    }
}
