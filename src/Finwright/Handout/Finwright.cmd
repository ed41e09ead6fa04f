@echo off
rem Starts the page. Close this window to end it; everything is kept as you go.
"%~dp0Finwright.exe" serve
if errorlevel 1 pause
