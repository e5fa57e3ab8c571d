using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Seedfall.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class FieldLog : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<double>(
                name: "RoundDepthMm",
                table: "Seasons",
                type: "REAL",
                nullable: true);

            migrationBuilder.AddColumn<int>(
                name: "SeedbedRounds",
                table: "Seasons",
                type: "INTEGER",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "Log",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    LawnId = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<long>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Received = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Log", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Log_Lawns_LawnId",
                        column: x => x.LawnId,
                        principalTable: "Lawns",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Log_LawnId",
                table: "Log",
                column: "LawnId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Log");

            migrationBuilder.DropColumn(
                name: "RoundDepthMm",
                table: "Seasons");

            migrationBuilder.DropColumn(
                name: "SeedbedRounds",
                table: "Seasons");
        }
    }
}
