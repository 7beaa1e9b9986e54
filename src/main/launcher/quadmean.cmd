@echo off
rem Starts Quadmean with options of Java that halve the time of short runs. QUADMEAN_OPTS adds others, such as -Xmx4g.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 %QUADMEAN_OPTS% -jar "%~dp0quadmean.jar" %*
exit /b %ERRORLEVEL%
